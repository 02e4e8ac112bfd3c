package org.fumewarden.model;

/** The day from which a period counts. */
public enum Anchor implements Keyed {
    LAST_DONE,
    LAST_USED,
    MANUFACTURE_DATE,
    FIRST_FITTED_DATE,
    MARKED_EXPIRY,
    RECORD_MADE,
    LAST_ENTRY,
    EMPLOYMENT_END,
    EXPOSURE_START,
    EVENT_DATE
}
