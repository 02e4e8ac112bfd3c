package org.fumewarden.report.plot;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.fumewarden.endurance.CurvePoint;

/** Share of the gas that comes through against time, with the change time marked. */
public final class BreakthroughPlot {
    private static final int BAR = 40;

    private BreakthroughPlot() {}

    /**
     * The plot as SVG with title and description.
     *
     * @param agent name of the gas
     * @param points by rising time
     * @param changeMinutes when the filter is changed
     * @param allowedShare exit over inlet concentration that is allowed, 0 to 1
     */
    public static String svg(String agent, List<CurvePoint> points, double changeMinutes, double allowedShare) {
        AxisCanvas canvas =
                new AxisCanvas(Math.max(changeMinutes, last(points)), 100 * Math.max(allowedShare, top(points)));
        canvas.axes("minutes from a new filter", "% coming through");
        canvas.level(100 * allowedShare, "allowed " + AxisCanvas.number(100 * allowedShare) + " %");
        canvas.moment(changeMinutes, "change by " + AxisCanvas.number(Math.floor(changeMinutes)) + " min");
        canvas.series(
                0,
                agent,
                points.stream()
                        .map(point -> new double[] {point.minutes(), 100 * point.exitFraction()})
                        .toList());
        return canvas.svg(
                "Breakthrough of " + agent + " against time",
                points.stream()
                                .map(point -> AxisCanvas.number(100 * point.exitFraction()) + " % at "
                                        + AxisCanvas.number(point.minutes()) + " min")
                                .collect(Collectors.joining(", "))
                        + ". Change the filter by " + AxisCanvas.number(Math.floor(changeMinutes)) + " min; allowed is "
                        + AxisCanvas.number(100 * allowedShare) + " %. Modelled, not measured.");
    }

    /** The same as text, one line for each point. */
    public static String text(String agent, List<CurvePoint> points, double changeMinutes, double allowedShare) {
        double top = Math.max(allowedShare, top(points));
        StringBuilder text = new StringBuilder("Breakthrough of " + agent + "; | marks the allowed "
                + AxisCanvas.number(100 * allowedShare) + " %, change by "
                + AxisCanvas.number(Math.floor(changeMinutes)) + " min\n");
        int mark = (int) Math.round(allowedShare / top * BAR);
        for (CurvePoint point : points) {
            int length = (int) Math.ceil(point.exitFraction() / top * BAR);
            StringBuilder bar = new StringBuilder();
            for (int i = 0; i <= BAR; i++) {
                bar.append(i == mark ? '|' : i < length ? '#' : '.');
            }
            text.append(String.format(
                    Locale.ROOT,
                    "  %8.1f min %6.2f %% %s %s\n",
                    point.minutes(),
                    100 * point.exitFraction(),
                    bar,
                    point.minutes() < changeMinutes ? "before the change" : "after the change"));
        }
        return text.toString();
    }

    private static double last(List<CurvePoint> points) {
        return points.stream().mapToDouble(CurvePoint::minutes).max().orElse(1);
    }

    private static double top(List<CurvePoint> points) {
        return points.stream().mapToDouble(CurvePoint::exitFraction).max().orElse(1);
    }
}
