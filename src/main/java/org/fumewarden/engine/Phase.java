package org.fumewarden.engine;

import org.fumewarden.model.Keyed;

/** The rooms a decision walks through. A phase sees only what earlier phases concluded. Its key is the name of its rule file. */
public enum Phase implements Keyed {
    HAZARD,
    ATMOSPHERE,
    MEASURE,
    NEED,
    SUM,
    ACCOUNT,
    FILTER,
    EXCLUSION,
    SELECTION,
    CIRCUMSTANCE,
    DUTY,
    CAUTION,
    STATUS
}
