package org.fumewarden.codes;

import java.util.Locale;

/** What kind of thing is wrong, for who says it in words of their own; the sentences of the page are named after it. */
public enum Fault {
    /** Nothing but its message tells it. */
    OTHER,
    /** A word or an agent that can be read in several ways, or in none. */
    MEANINGS,
    CHOICE,
    AGENT,
    NAME,
    /** A quantity that cannot be read. */
    AMOUNT,
    NUMBER,
    RANGE,
    POINT,
    FIGURE,
    UNIT,
    UNIT_NONE,
    MIXED,
    /** A quantity that cannot be. */
    NEGATIVE,
    PERCENT,
    IMPOSSIBLE,
    GAS,
    PEAK,
    ZERO,
    TIME,
    SHIFT,
    /** What is given twice, or not at all. */
    TWICE,
    MISSING,
    LEVEL_NONE,
    /** A day that cannot be read, or is another than it can be. */
    DAY,
    AFTER,
    FUTURE,
    EARLY,
    /** What the register or the log does not take. */
    WRITTEN,
    POINTS,
    UNITS,
    THERE,
    SCRAPPED,
    UNKNOWN,
    /** A file of another kind than the one that was asked for. */
    NO_ADVICE,
    /** The server had too much to do. */
    SLOW;

    /** The word that names it in files and in the names of sentences. */
    public String key() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
