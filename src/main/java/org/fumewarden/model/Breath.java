package org.fumewarden.model;

import java.math.BigDecimal;

/**
 * The air that the wearer draws at the peak of a breath, worked out from work rate, speech and altitude. Without an altitude the
 * least is that at sea level and the most that at the highest place where anybody welds.
 *
 * @param rate work rate that it is worked out for; the hardest of the ordinary ones when the task gives none
 * @param talk whether the wearer talks at work, which draws more
 * @param height metres up to which the peak is enough
 * @param least litres per minute
 * @param peak litres per minute
 * @param most litres per minute
 */
public record Breath(
        String rate, String talk, BigDecimal height, BigDecimal least, BigDecimal peak, BigDecimal most, String path)
        implements Input {
    public Breath {
        Checks.text("rate", rate);
        Checks.text("talk", talk);
        Checks.positive("least", least);
    }
}
