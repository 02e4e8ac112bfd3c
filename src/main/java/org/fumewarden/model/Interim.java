package org.fumewarden.model;

/**
 * What is safe for every answer that is still open.
 *
 * @param order {@code stay-out}, or the class of respirator that covers every case left
 */
public record Interim(String order) implements Conclusion {
    @Override
    public String subject() {
        return order;
    }
}
