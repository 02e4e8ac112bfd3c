package org.fumewarden.model;

/** Counts as people read them. */
public final class Count {
    private Count() {}

    /** A count with its noun: 1 sample, 3 samples, 2 entries. */
    public static String of(long number, String noun) {
        String plural = noun.endsWith("y") ? noun.substring(0, noun.length() - 1) + "ies" : noun + "s";
        return number + " " + (number == 1 ? noun : plural);
    }
}
