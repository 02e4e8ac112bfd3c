package org.fumewarden.endurance;

/**
 * A use time that must not be exceeded.
 *
 * @param kind the method it comes from
 * @param minutes of use from a new filter, above zero
 * @param says how it was reached, one sentence for the change schedule
 * @param standsAlone false when the method may only be used together with another one
 */
public record TimeBound(BoundKind kind, double minutes, String says, boolean standsAlone) {
    public TimeBound {
        if (kind == null || says == null || says.isBlank()) {
            throw new IllegalArgumentException("A bound needs its method and its sentence.");
        }
        if (!Double.isFinite(minutes) || minutes <= 0) {
            throw new BadFigure("A bound must be above zero minutes but is " + minutes + ".", "Refuse instead.");
        }
    }
}
