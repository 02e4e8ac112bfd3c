package org.fumewarden.model;

/** A required factor that cannot be worked out until a question is answered. */
public record OpenNeed(String agent, String question) implements Conclusion {
    @Override
    public String subject() {
        return agent;
    }
}
