package org.fumewarden.check.oracle;

import java.util.List;
import org.fumewarden.advice.Advice;

/** One family of things that must hold of every advice. */
interface Family {
    /** What the advice breaks, in words; empty when nothing is known against it. */
    List<String> objections(Advice advice);
}
