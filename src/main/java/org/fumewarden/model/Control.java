package org.fumewarden.model;

/** A measure that comes before a respirator. */
public record Control(String measure) implements Conclusion {
    @Override
    public String subject() {
        return measure;
    }
}
