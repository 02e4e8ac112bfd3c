package org.fumewarden.model;

/**
 * A duty that the task brings with it.
 *
 * @param unless what would make it go away, where a circumstance on which it hangs is not known; {@code none} where all are
 */
public record Owed(String duty, String unless) implements Conclusion {
    /** True when every circumstance on which it hangs is known. */
    public boolean certain() {
        return unless.equals("none");
    }

    @Override
    public String subject() {
        return duty;
    }
}
