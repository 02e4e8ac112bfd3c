package org.fumewarden.advice;

import org.fumewarden.model.Keyed;

/** How far an advice may be relied on, most serious first. */
public enum Status implements Keyed {
    DO_NOT_ENTER,
    CONFLICT,
    INCOMPLETE,
    COMPLETE
}
