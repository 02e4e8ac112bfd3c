package org.fumewarden.model;

import java.math.BigDecimal;
import java.util.Optional;

/**
 * An airborne agent.
 *
 * @param form {@code particle} or {@code gas} (gas stands for gases and vapours)
 * @param molarMass g/mol, empty where a conversion between ppm and mg/m3 has no meaning
 * @param highest the threshold that says how many times the average of a shift its highest quarter of an hour is taken as at most
 */
public record Agent(
        RowRef ref, String id, String name, String form, String cas, Optional<BigDecimal> molarMass, String highest)
        implements Row {}
