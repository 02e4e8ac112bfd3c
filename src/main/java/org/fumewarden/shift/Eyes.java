package org.fumewarden.shift;

import java.util.Map;
import java.util.OptionalDouble;
import org.fumewarden.endurance.ShadeAdvice;

/** Shade of the eye filter for the arc or flame of a task. */
final class Eyes {
    private static final double MILLIMETRES = 1000;

    /** Names of the shade table for processes of the task file; a process without a row is looked up in the standard. */
    private static final Map<String, String> ROWS = Map.ofEntries(
            Map.entry("manual-metal-arc", "covered-electrode"),
            Map.entry("mag-solid-wire", "gas-metal-or-flux-cored-arc"),
            Map.entry("mig-solid-wire", "gas-metal-or-flux-cored-arc"),
            Map.entry("mig-mag-pulsed", "gas-metal-or-flux-cored-arc"),
            Map.entry("flux-cored-gas", "gas-metal-or-flux-cored-arc"),
            Map.entry("flux-cored-self-shielded", "gas-metal-or-flux-cored-arc"),
            Map.entry("tig", "gas-tungsten-arc"),
            Map.entry("plasma-welding", "plasma-arc-welding"),
            Map.entry("plasma-cutting", "plasma-arc-cutting"),
            Map.entry("air-carbon-arc-gouging", "air-carbon-arc-cutting"),
            Map.entry("gas-welding", "gas-welding"),
            Map.entry("oxyfuel-cutting", "oxygen-cutting"),
            Map.entry("brazing", "torch-brazing"),
            Map.entry("soft-soldering", "torch-soldering"));

    private Eyes() {}

    static ShadeAdvice shade(Given given, ShiftTables tables) {
        String process = given.word("process").map(ROWS::get).orElse("");
        OptionalDouble plate = given.number("plate-thickness");
        double size = given.number("welding-current").orElse(plate.isPresent() ? plate.getAsDouble() * MILLIMETRES : 0);
        return process.isEmpty() || size == 0 && !process.startsWith("torch")
                ? new ShadeAdvice.SeeStandard(
                        "Eye shade: see the standard in force (EN 169, ISO 16321 or the national table) for process and"
                                + " current. Maybe add task.welding-current or task.plate-thickness.")
                : tables.minimumShades().advise(tables.suggestedShades(), process, size);
    }
}
