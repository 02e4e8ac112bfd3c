package org.fumewarden.model;

import java.math.BigDecimal;

/**
 * The air that the wearer draws at the peak of a breath, worked out from work rate, speech and altitude.
 *
 * @param rate work rate that it is worked out for; the hardest of the ordinary ones when the task gives none
 * @param peak litres per minute
 */
public record Breath(String rate, BigDecimal peak, String path) implements Input {
    public Breath {
        Checks.text("rate", rate);
        Checks.positive("peak", peak);
    }
}
