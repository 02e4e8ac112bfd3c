package org.fumewarden.model;

import java.util.Locale;
import java.util.Map;

/**
 * What the mark on the filter says that it holds.
 *
 * @param mark as it stands on the filter
 * @param gases types of gas with their class; 0 for a type without one
 * @param particle particle class or series, {@code none} when it has no particle filter
 */
public record Marked(String mark, Map<String, Integer> gases, String particle, String path) implements Input {
    public Marked {
        Checks.text("mark", mark);
        Checks.text("particle", particle);
        gases = Map.copyOf(gases);
    }

    /** True when the filter is not one of the type that is needed; a type that is open upwards is above class 1. */
    public boolean lacks(FilterNeed need) {
        boolean up = need.type().endsWith("-up");
        String type = need.type()
                .replaceFirst("( cartridge|-P3|-up)$", "")
                .replaceFirst("\\d+$", "")
                .replace(' ', '-')
                .toUpperCase(Locale.ROOT);
        return gases.getOrDefault(type, -1) < (up ? 2 : 0);
    }
}
