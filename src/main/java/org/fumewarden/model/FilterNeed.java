package org.fumewarden.model;

/** A filter that the task calls for: a particle class, a gas type, or a mark such as oil-proof. */
public record FilterNeed(String agent, String type) implements Conclusion {
    @Override
    public String subject() {
        return agent;
    }
}
