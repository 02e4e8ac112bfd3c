package org.fumewarden.shift;

import org.fumewarden.endurance.WorkRate;

/** How the wearer breathes. */
final class Breathing {
    private static final String HARDEST = "very-high";

    private Breathing() {}

    /** The work rate of the task; the hardest of the ordinary classes when it is not given. */
    static WorkRate rate(Given given, ShiftTables tables) {
        return tables.workRates().get(given.word("work-rate").orElse(HARDEST));
    }

    /** Air for the same oxygen over that at sea level; that of the highest altitude of the table when it is above it. */
    static double factor(Given given, ShiftTables tables) {
        double altitude = given.number("altitude").orElse(0);
        return tables.atmosphere()
                .breathingFactor(Math.min(altitude, tables.atmosphere().highestAltitude()))
                .value()
                .orElse(1.0);
    }
}
