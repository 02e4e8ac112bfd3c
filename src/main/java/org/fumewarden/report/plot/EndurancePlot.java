package org.fumewarden.report.plot;

import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import org.fumewarden.endurance.EnduranceCurve;

/** Filter resistance against hours of run time, with the shift marked. */
public final class EndurancePlot {
    private static final int BAR = 40;

    private EndurancePlot() {}

    /**
     * The plot as SVG with title and description.
     *
     * @param curves the user's curves, one for each pack
     * @param shiftHours wear time of the shift
     * @param filterNow where the filter stands now, empty when not measured
     */
    public static String svg(List<EnduranceCurve> curves, double shiftHours, OptionalDouble filterNow) {
        double top = curves.stream()
                .flatMap(curve -> curve.points().stream())
                .mapToDouble(EnduranceCurve.Point::at)
                .max()
                .orElse(1);
        AxisCanvas canvas = new AxisCanvas(top, Math.max(shiftHours, longest(curves)));
        canvas.axes(axis(curves), "hours of run time");
        canvas.level(shiftHours, "shift " + AxisCanvas.number(shiftHours) + " h");
        filterNow.ifPresent(now -> canvas.moment(now, "now " + AxisCanvas.number(now)));
        for (int i = 0; i < curves.size(); i++) {
            canvas.series(
                    i,
                    curves.get(i).pack(),
                    curves.get(i).points().stream()
                            .map(point -> new double[] {point.at(), point.hours()})
                            .toList());
        }
        return canvas.svg("Run time of the powered unit by filter resistance", description(curves, shiftHours));
    }

    /** The same as text, one line for each measured point. */
    public static String text(List<EnduranceCurve> curves, double shiftHours) {
        double top = Math.max(shiftHours, longest(curves));
        StringBuilder text = new StringBuilder("Run time by filter resistance; | marks the wear of ")
                .append(AxisCanvas.number(shiftHours))
                .append(" h\n");
        for (EnduranceCurve curve : curves) {
            text.append(curve.pack()).append('\n');
            for (EnduranceCurve.Point point : curve.points()) {
                text.append(String.format(
                        Locale.ROOT,
                        "  %10s %6s h %s %s%n",
                        curve.scale().words(AxisCanvas.number(point.at())),
                        AxisCanvas.number(point.hours()),
                        bar(point.hours(), shiftHours, top),
                        point.hours() >= shiftHours ? "lasts" : "too short"));
            }
        }
        return text.toString().replace(System.lineSeparator(), "\n");
    }

    private static String axis(List<EnduranceCurve> curves) {
        EnduranceCurve.Scale scale =
                curves.isEmpty() ? EnduranceCurve.Scale.OWN : curves.get(0).scale();
        return scale == EnduranceCurve.Scale.OWN
                ? "filter resistance, own points"
                : "filter resistance, " + scale.words("").strip();
    }

    private static String bar(double hours, double shiftHours, double top) {
        int mark = (int) Math.round(shiftHours / top * BAR);
        int length = (int) Math.floor(hours / top * BAR);
        StringBuilder bar = new StringBuilder();
        for (int i = 0; i <= BAR; i++) {
            bar.append(i == mark ? '|' : i < length ? '#' : '.');
        }
        return bar.toString();
    }

    private static double longest(List<EnduranceCurve> curves) {
        return curves.stream()
                .flatMap(curve -> curve.points().stream())
                .mapToDouble(EnduranceCurve.Point::hours)
                .max()
                .orElse(1);
    }

    private static String description(List<EnduranceCurve> curves, double shiftHours) {
        return curves.stream()
                        .map(curve -> "Pack " + curve.pack() + ": "
                                + curve.points().stream()
                                        .map(point -> AxisCanvas.number(point.hours()) + " h at "
                                                + curve.scale().words(AxisCanvas.number(point.at())))
                                        .collect(Collectors.joining(", ")))
                        .collect(Collectors.joining(". "))
                + ". The shift is " + AxisCanvas.number(shiftHours) + " h.";
    }
}
