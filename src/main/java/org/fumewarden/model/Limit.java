package org.fumewarden.model;

import java.math.BigDecimal;

/** An exposure limit of a code. */
public record Limit(RowRef ref, String agent, Averaging averaging, BigDecimal value, Unit unit, String fraction)
        implements Row {
    public Limit {
        Checks.positive("value", value);
    }

    /** The question of a task file that asks for the level of this limit. */
    public String question() {
        return "exposures." + agent + "." + averaging.key();
    }

    /** True when the limit stands in the table with the id, for rules that hold for one list only. */
    public boolean listedIn(String table) {
        return ref.table().equals(table);
    }

    /** True when the exposure, in whatever unit it was given, is above this limit times the multiple. */
    public boolean passedBy(Exposure exposure, Threshold multiple, Agent about, Threshold molarVolume) {
        BigDecimal level = Concentrations.convert(exposure.level(), exposure.unit(), unit, about, molarVolume);
        return level.compareTo(value.multiply(multiple.value())) > 0;
    }

    /** True when the exposure, in whatever unit it was given, is above this limit. */
    public boolean passedBy(Exposure exposure, Agent about, Threshold molarVolume) {
        return Concentrations.convert(exposure.level(), exposure.unit(), unit, about, molarVolume)
                        .compareTo(value)
                > 0;
    }
}
