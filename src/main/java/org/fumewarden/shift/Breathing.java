package org.fumewarden.shift;

import org.fumewarden.endurance.BreathDemand;

/** How the wearer breathes. */
final class Breathing {
    private Breathing() {}

    static BreathDemand demand(UnitAnswers given, ShiftTables tables) {
        return BreathDemand.of(
                tables.workRates()::get,
                tables.atmosphere(),
                given.word("work-rate"),
                given.word("speech"),
                given.number("altitude"));
    }
}
