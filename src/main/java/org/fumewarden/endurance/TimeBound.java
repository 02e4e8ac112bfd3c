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
    private static final long DAY = 1440;

    public TimeBound {
        if (kind == null || says == null || says.isBlank()) {
            throw new IllegalArgumentException("A bound needs its method and its sentence.");
        }
        if (!Double.isFinite(minutes) || minutes <= 0) {
            throw new BadFigure("A bound must be above zero minutes but is " + minutes + ".", "Refuse instead.");
        }
    }

    /** The bound beside a shorter one, in words, its time rounded down. */
    public String besideShorter() {
        long down = WrittenNumbers.minutesDown(minutes);
        String time = minutes < DAY ? WrittenNumbers.clock(down) : "more than a day";
        return kind == BoundKind.SHELF_LIFE
                ? says
                : "Another limit, longer (" + kind.words() + "): " + time + ". " + says;
    }
}
