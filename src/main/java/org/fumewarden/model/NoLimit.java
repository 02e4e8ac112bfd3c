package org.fumewarden.model;

/**
 * An agent for which no limit is held: never a reason for no control.
 *
 * @param searched true when the list of the code was searched and has none; false when nobody has looked
 */
public record NoLimit(String agent, boolean searched) implements Conclusion {
    @Override
    public String subject() {
        return agent;
    }
}
