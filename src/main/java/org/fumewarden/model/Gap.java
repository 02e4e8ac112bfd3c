package org.fumewarden.model;

/** A question that must be answered before the advice is complete. */
public record Gap(String question) implements Conclusion {
    @Override
    public String subject() {
        return question;
    }
}
