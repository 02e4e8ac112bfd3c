package org.fumewarden.model;

/** A state of the atmosphere that closes the way to some or all respirators. */
public record Gate(String kind) implements Conclusion {
    @Override
    public String subject() {
        return kind;
    }
}
