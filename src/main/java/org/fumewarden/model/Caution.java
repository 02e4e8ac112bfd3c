package org.fumewarden.model;

/** A warning that belongs on the sheet. */
public record Caution(String topic) implements Conclusion {
    @Override
    public String subject() {
        return topic;
    }
}
