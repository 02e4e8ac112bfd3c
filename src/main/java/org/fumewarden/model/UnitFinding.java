package org.fumewarden.model;

/**
 * What speaks against the unit in hand, or is still open about it. Its class is another matter: one sick unit makes no class unfit.
 *
 * @param condition what was found, or the question that is open
 * @param verdict {@code not-for-use} or {@code open}
 */
public record UnitFinding(String condition, String verdict) implements Conclusion {
    @Override
    public String subject() {
        return condition;
    }
}
