package org.fumewarden.batch;

/**
 * What became of one task.
 *
 * @param number its place in the input, from 1
 * @param fate whether it was advised on
 * @param json one line: {@code {"line":7,"input":"...","advice":{...},"digest":"..."}}, or with {@code "problems":[...]}; without
 *     a line end. {@code input} is a digest of the task, {@code digest} one of all that stands before it in the line
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
