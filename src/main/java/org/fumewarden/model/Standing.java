package org.fumewarden.model;

/**
 * How far the advice may be relied on, as one rule sees it. Of several the most serious holds.
 *
 * @param state {@code do-not-enter}, {@code conflict}, {@code incomplete} or {@code complete}
 * @param because what brings the state about: a gate, a stop, a question, a topic
 */
public record Standing(String state, String because) implements Conclusion {
    public Standing {
        Checks.text("state", state);
        Checks.text("because", because);
    }

    @Override
    public String subject() {
        return because;
    }
}
