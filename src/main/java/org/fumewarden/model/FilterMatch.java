package org.fumewarden.model;

import java.math.BigDecimal;
import java.util.Optional;

/**
 * The filter type that holds a gas or vapour in one marking system.
 *
 * @param system {@code en} or {@code niosh}
 * @param type type letters or cartridge description, {@code none} when no filter holds the agent, {@code ask} when the standard names none
 * @param highest highest use concentration in ppm where the standard or law caps it
 */
public record FilterMatch(RowRef ref, String agent, String system, String type, Optional<BigDecimal> highest)
        implements Row {

    /** True when the standard or the law caps the use of the filter. */
    public boolean capped() {
        return highest.isPresent();
    }

    /** True when the exposure is above the highest use concentration. */
    public boolean exceededBy(Exposure exposure, Agent about, Threshold molarVolume) {
        return capped()
                && Concentrations.convert(exposure.level(), exposure.unit(), Unit.PPM, about, molarVolume)
                                .compareTo(highest.get())
                        > 0;
    }
}
