package org.fumewarden.model;

/** A reason not to enter or not to start. */
public record Stop(String reason) implements Conclusion {
    @Override
    public String subject() {
        return reason;
    }
}
