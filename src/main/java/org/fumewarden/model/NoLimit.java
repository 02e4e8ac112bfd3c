package org.fumewarden.model;

/**
 * An agent for which no limit is held: never a reason for no control.
 *
 * @param list {@link NoneListed#LIMITS} when the list of the code was searched and has none, {@code benchmark} when a
 *     benchmark stands in its place, {@link NoneListed#OF_MEMBERS} when only single members of the group have one, {@link NoneListed#NOT_HELD} when nobody has looked
 */
public record NoLimit(String agent, String list) implements Conclusion {
    @Override
    public String subject() {
        return agent;
    }
}
