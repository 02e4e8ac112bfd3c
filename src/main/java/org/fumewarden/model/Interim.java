package org.fumewarden.model;

/**
 * What is ordered while questions are open.
 *
 * @param order {@code stay-out}, {@code another-unit}, or the class of respirator for air that nobody knows
 */
public record Interim(String order) implements Conclusion {
    @Override
    public String subject() {
        return order;
    }
}
