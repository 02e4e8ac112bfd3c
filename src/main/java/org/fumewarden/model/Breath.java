package org.fumewarden.model;

import java.math.BigDecimal;

/**
 * The air that the wearer draws at the peak of a breath, worked out from work rate, speech and altitude, all in litres per minute.
 * Where nobody told the altitude, the peak is that at sea level, and the other two are those of higher places.
 *
 * @param rate work rate that it is worked out for; the hardest of the ordinary ones when the task gives none
 * @param talk whether the wearer talks at work, which draws more
 * @param peak the least that it can be
 * @param thin where thin air begins
 * @param most at the highest place where anybody welds
 */
public record Breath(String rate, String talk, BigDecimal peak, BigDecimal thin, BigDecimal most, String path)
        implements Input {
    public Breath {
        Checks.text("rate", rate);
        Checks.text("talk", talk);
        Checks.positive("peak", peak);
    }
}
