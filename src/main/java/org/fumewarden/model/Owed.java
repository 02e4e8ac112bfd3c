package org.fumewarden.model;

/** A duty that the task brings with it. */
public record Owed(String duty) implements Conclusion {
    @Override
    public String subject() {
        return duty;
    }
}
