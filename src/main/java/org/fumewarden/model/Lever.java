package org.fumewarden.model;

/**
 * A change within the power of the people on site.
 *
 * @param path place in the task file
 * @param value what it becomes
 * @param says what somebody has to do, in words
 * @param unless the answer beside which it is of no use, as {@code path=value}; empty when it is of use everywhere
 */
public record Lever(RowRef ref, String id, String path, String value, String says, String unless) implements Row {
    /** True when the answer leaves this lever of use. */
    public boolean ofUseBeside(String answerPath, String answer) {
        return !unless.equals(answerPath + "=" + answer);
    }
}
