package org.fumewarden.model;

/** A kind of agent that the respirator has to hold: {@code particles} or {@code gas}. */
public record Demand(String agent, String form) implements Conclusion {
    @Override
    public String subject() {
        return agent;
    }
}
