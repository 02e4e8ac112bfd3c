package org.fumewarden.model;

/**
 * An agent that a competent person judged to stay at or below its limits without a measurement.
 *
 * @param by who judged
 * @param bound how far below, a word of the list {@code judgement-bounds}
 * @param basis what the judgement rests on, a word of the list {@code judgement-bases}
 * @param day when, as a date
 * @param age whole days from then to the day of the task, zero or more
 */
public record Judged(
        String agent, String bound, String because, String by, String basis, String day, int age, String path)
        implements Input {
    /** The word of a judgement that says no more than that the limit is kept. */
    public static final String AT_MOST_THE_LIMIT = "below-limit";

    /** The row that says what a judgement of this bound counts as. */
    public String countsAs() {
        return "judged-" + bound;
    }

    public Judged {
        Checks.text("agent", agent);
        Checks.text("bound", bound);
        Checks.text("because", because);
        Checks.text("by", by);
        Checks.text("basis", basis);
        Checks.text("day", day);
    }
}
