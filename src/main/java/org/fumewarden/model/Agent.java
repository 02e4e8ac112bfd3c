package org.fumewarden.model;

import java.math.BigDecimal;
import java.util.Optional;

/**
 * An airborne agent.
 *
 * @param form {@code particle} or {@code gas} (gas stands for gases and vapours)
 * @param molarMass g/mol, empty where a conversion between ppm and mg/m3 has no meaning
 */
public record Agent(RowRef ref, String id, String name, String form, String cas, Optional<BigDecimal> molarMass)
        implements Row {}
