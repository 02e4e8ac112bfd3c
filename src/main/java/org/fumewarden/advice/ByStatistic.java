package org.fumewarden.advice;

import java.math.BigDecimal;

/**
 * The required factor by one statistic of the same samples.
 *
 * @param statistic in words
 * @param level in the unit of the limit
 * @param factor level over limit, rounded up for print
 */
public record ByStatistic(String statistic, BigDecimal level, BigDecimal factor) {}
