package org.fumewarden.model;

/**
 * An agent that a competent person judged to stay at or below its limits without a measurement.
 *
 * @param by who judged
 * @param basis what the judgement rests on, a word of the list {@code judgement-bases}
 * @param day when, as a date
 * @param age whole days from then to the day of the task, zero or more
 */
public record Judged(String agent, String because, String by, String basis, String day, int age, String path)
        implements Input {
    public Judged {
        Checks.text("agent", agent);
        Checks.text("because", because);
        Checks.text("by", by);
        Checks.text("basis", basis);
        Checks.text("day", day);
    }
}
