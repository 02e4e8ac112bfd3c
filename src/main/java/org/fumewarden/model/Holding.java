package org.fumewarden.model;

/** What the device as a whole has to hold: {@code particles}, {@code gas} or {@code combined}. */
public record Holding(String kind) implements Conclusion {
    @Override
    public String subject() {
        return kind;
    }
}
