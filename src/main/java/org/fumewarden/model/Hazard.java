package org.fumewarden.model;

/** An agent that the task puts into the air. */
public record Hazard(String agent, String form, String rank) implements Conclusion {
    @Override
    public String subject() {
        return agent;
    }
}
