package org.fumewarden.model;

/** What a duty applies to: a kind of item, or each pair of a wearer and a mask. */
public enum Subject implements Keyed {
    WEARER,
    WEARER_MASK,
    UNIT,
    MASK,
    FILTER,
    BATTERY,
    PLANT,
    AIR_SUPPLY,
    SITE
}
