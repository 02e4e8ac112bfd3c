package org.fumewarden.model;

import java.math.BigDecimal;

/**
 * The air that the wearer draws at the peak of a breath, worked out from work rate, speech and altitude.
 *
 * @param rate work rate that it is worked out for; the hardest of the ordinary ones when the task gives none
 * @param talk whether the wearer talks at work, which draws more
 * @param peak litres per minute
 */
public record Breath(String rate, String talk, BigDecimal peak, String path) implements Input {
    public Breath {
        Checks.text("rate", rate);
        Checks.text("talk", talk);
        Checks.positive("peak", peak);
    }
}
