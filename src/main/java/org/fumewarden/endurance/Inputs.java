package org.fumewarden.endurance;

import java.util.Optional;
import org.fumewarden.model.Reckoning;
import org.fumewarden.model.Soundness;

/** Checks of numbers before they meet a formula. */
final class Inputs {
    private final StringBuilder faults = new StringBuilder();

    /** The number must be above zero. */
    Inputs positive(String name, double value) {
        return hold(Double.isFinite(value) && value > 0, name, value, "must be above zero");
    }

    /** The number must be zero or more. */
    Inputs notNegative(String name, double value) {
        return hold(Double.isFinite(value) && value >= 0, name, value, "must be zero or more");
    }

    /** The number must lie between two others, ends included. */
    Inputs within(String name, double value, double low, double high) {
        return hold(value >= low && value <= high, name, value, "must lie between " + low + " and " + high);
    }

    private Inputs hold(boolean sound, String name, double value, String rule) {
        if (!sound) {
            faults.append(faults.isEmpty() ? "" : " ")
                    .append(name)
                    .append(" is ")
                    .append(value)
                    .append(" but ")
                    .append(rule)
                    .append('.');
        }
        return this;
    }

    /** The refusal when a number was bad. */
    <T> Optional<Reckoning<T>> refusal() {
        return faults.isEmpty()
                ? Optional.empty()
                : Optional.of(
                        Reckoning.refuse(Soundness.INVALID_VALUE, faults.toString(), "Check the number and its unit."));
    }

    /** Throws when a number of a table was bad. */
    void orThrow(String what) {
        if (!faults.isEmpty()) {
            throw new BadFigure(what + ": " + faults, "Check the columns.");
        }
    }
}
