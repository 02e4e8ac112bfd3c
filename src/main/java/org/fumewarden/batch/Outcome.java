package org.fumewarden.batch;

/**
 * What became of one task.
 *
 * @param number its place in the input, from 1
 * @param fate whether it was advised on
 * @param json one line: {@code {"line":7,"advice":{...}}}, or {@code {"line":7,"problems":[...]}}; without a line end
 */
public record Outcome(long number, Fate fate, String json) {
    /** The three ends a task can come to. */
    public enum Fate {
        /** There is advice, which may be incomplete. */
        ADVISED,
        /** The task cannot be read; the problems say why. */
        REJECTED,
        /** The program failed on it: rejected as well, and worth a report. */
        FAULT
    }

    public boolean advised() {
        return fate == Fate.ADVISED;
    }
}
