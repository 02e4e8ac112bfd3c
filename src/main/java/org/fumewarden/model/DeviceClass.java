package org.fumewarden.model;

/**
 * A class of respirator, as a standard defines it.
 *
 * @param family reading order of the sheet, for example {@code powered-hood}
 * @param seal {@code tight} or {@code loose}
 * @param supply {@code filter}, {@code fresh-air-hose}, {@code airline} or {@code self-contained}
 * @param pressure {@code negative}, {@code powered}, {@code demand}, {@code continuous} or {@code positive}
 * @param covers {@code nose-mouth}, {@code face} or {@code head}
 * @param particle particle filter class or series it carries, or {@code none}
 * @param gas {@code fits} when a gas filter can be fitted, {@code none} otherwise
 * @param escape {@code auxiliary} when it carries its own air for escape
 * @param order place in the ranking, 1 first
 */
public record DeviceClass(
        RowRef ref,
        String id,
        String name,
        String family,
        String seal,
        String supply,
        String pressure,
        String covers,
        String particle,
        String gas,
        String escape,
        int order)
        implements Row {

    /** True when the wearer breathes workplace air through a filter. */
    public boolean filters() {
        return supply.equals("filter");
    }

    /** True when a battery drives the air. */
    public boolean powered() {
        return pressure.equals("powered");
    }
}
