package org.fumewarden.report;

import java.util.Map;
import java.util.TreeMap;
import org.fumewarden.report.plot.BreakthroughPlot;
import org.fumewarden.report.plot.EndurancePlot;
import org.fumewarden.shift.GasLife;
import org.fumewarden.shift.ShiftSheet;

/** The plots of a shift as SVG. */
public final class ShiftPlots {
    private ShiftPlots() {}

    /** File name to SVG; empty when there is neither an own curve nor a modelled breakthrough. */
    public static Map<String, String> svg(ShiftSheet sheet) {
        Map<String, String> plots = new TreeMap<>();
        if (!sheet.curves().isEmpty() && sheet.wearHours().isPresent()) {
            plots.put(
                    "run-time.svg",
                    EndurancePlot.svg(sheet.curves(), sheet.wearHours().getAsDouble(), sheet.filterNow()));
        }
        for (GasLife gas : sheet.gases()) {
            ShiftText.breakthrough(gas)
                    .ifPresent(minutes -> plots.put(
                            "breakthrough-" + gas.agent() + ".svg",
                            BreakthroughPlot.svg(
                                    gas.name(),
                                    gas.curve(),
                                    minutes,
                                    gas.allowedShare().orElseThrow())));
        }
        return plots;
    }
}
