package org.fumewarden.model;

/** An agent for which the code lists no limit: never a reason for no control. */
public record NoLimit(String agent) implements Conclusion {
    @Override
    public String subject() {
        return agent;
    }
}
