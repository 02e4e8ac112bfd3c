package org.fumewarden.model;

/** The answer of one rule to a question that has only one answer. Two different rulings are a conflict. */
public record Ruling(String topic, String value) implements Conclusion {
    @Override
    public String subject() {
        return topic;
    }
}
