package org.fumewarden.advice;

import org.fumewarden.model.Keyed;

/** What the rules say of a class of respirator, best first. */
public enum Suitability implements Keyed {
    RECOMMENDED,
    SUITABLE,
    UNDECIDED,
    BARRED;

    /** True when it may be worn. */
    public boolean offered() {
        return this == RECOMMENDED || this == SUITABLE;
    }
}
