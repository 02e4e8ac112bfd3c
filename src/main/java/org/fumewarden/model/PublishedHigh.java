package org.fumewarden.model;

import java.math.BigDecimal;
import java.util.List;

/**
 * The highest level that published personal samples of a process give for an agent: a 95th percentile, or the maximum where a
 * study gives no more.
 *
 * @param metal base metal of the study, or {@code any}
 * @param places places of work for which it speaks
 */
public record PublishedHigh(
        RowRef ref, String agent, String process, String metal, List<String> places, BigDecimal value, Unit unit)
        implements Row {
    private static final String ANY = "any";

    public PublishedHigh {
        Checks.positive("value", value);
        places = List.copyOf(places);
    }

    /** True when it speaks for this metal at this place. */
    public boolean speaksFor(String baseMetal, String place) {
        return (metal.equals(ANY) || metal.equals(baseMetal)) && places.contains(place);
    }

    /** True when a stated level is above it; never for a gas of no known molar mass against dust, whose part it cannot be. */
    public boolean passedBy(Exposure stated, Agent about, Threshold molarVolume) {
        boolean comparable = stated.unit() == unit || about.molarMass().isPresent();
        return comparable && Concentrations.above(stated.level(), stated.unit(), value, unit, about, molarVolume);
    }
}
