package org.fumewarden.report.plot;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.apache.commons.lang3.StringUtils;
import org.fumewarden.report.html.Glued;

/** A ladder: for each class a bar over the values at which it still serves. */
public final class LadderChart {
    private static final int COLUMNS = 60;
    private static final int LEFT = 10;
    private static final int WIDTH = 600;
    private static final int ROW = 34;
    private static final int WIDE = 86;
    private static final String INK = "#1d2b23";

    private LadderChart() {}

    /** One point: the value and the names of the classes that serve there. */
    public record Point(BigDecimal value, List<String> serving) {}

    /** The chart in characters, classes with the same bar together: {@code #} serves, {@code .} does not. */
    public static String text(String axis, List<Point> points) {
        Map<String, List<String>> alike = new LinkedHashMap<>();
        for (String name : classes(points)) {
            StringBuilder bar = new StringBuilder();
            for (int column = 0; column < COLUMNS; column++) {
                Point at = points.get(column * (points.size() - 1) / (COLUMNS - 1));
                bar.append(at.serving().contains(name) ? '#' : '.');
            }
            alike.computeIfAbsent(bar.toString(), b -> new ArrayList<>()).add(name);
        }
        StringBuilder out = new StringBuilder();
        alike.forEach((bar, names) -> out.append(bar)
                .append("\n    ")
                .append(Glued.wrapped(String.join("; ", names), WIDE, "\n    "))
                .append('\n'));
        String first = points.get(0).value().toPlainString();
        String last = points.get(points.size() - 1).value().toPlainString();
        return out.append(first)
                .append(StringUtils.leftPad(last, COLUMNS - first.length()))
                .append('\n')
                .append(axis)
                .append('\n')
                .toString();
    }

    /** The chart as an accessible SVG: bars carry their range as text, colour is never the only sign. */
    public static String svg(String title, String axis, List<Point> points) {
        List<String> names = List.copyOf(classes(points));
        int height = 60 + ROW * Math.max(1, names.size());
        SvgCanvas canvas = new SvgCanvas(LEFT + WIDTH + 20, height, INK);
        for (int row = 0; row < names.size(); row++) {
            bars(canvas, names.get(row), row, points);
        }
        Point last = points.get(points.size() - 1);
        canvas.text(LEFT, height - 24, "start", INK, points.get(0).value().toPlainString());
        canvas.text(LEFT + WIDTH, height - 24, "end", INK, last.value().toPlainString());
        canvas.text(LEFT, height - 6, "start", INK, axis);
        String description = names.stream()
                .map(name -> name + ": " + ranges(name, points) + ". ")
                .collect(Collectors.joining());
        return canvas.svg(title + ": " + axis, description);
    }

    /** The name above its bar, so that a long one is never cut. */
    private static void bars(SvgCanvas canvas, String name, int row, List<Point> points) {
        int y = 10 + ROW * row;
        canvas.text(LEFT, y + 10, "start", INK, name);
        double step = (double) WIDTH / points.size();
        int start = -1;
        for (int i = 0; i <= points.size(); i++) {
            boolean serves = i < points.size() && points.get(i).serving().contains(name);
            if (serves && start < 0) {
                start = i;
            } else if (!serves && start >= 0) {
                canvas.rect(LEFT + start * step, y + 15, (i - start) * step, 10, "#4a6b57");
                start = -1;
            }
        }
    }

    private static String ranges(String name, List<Point> points) {
        BigDecimal from = null;
        BigDecimal to = null;
        for (Point point : points) {
            if (point.serving().contains(name)) {
                from = from == null ? point.value() : from;
                to = point.value();
            }
        }
        return from.toPlainString() + " \u2013 " + to.toPlainString();
    }

    private static Set<String> classes(List<Point> points) {
        Set<String> names = new LinkedHashSet<>();
        points.forEach(p -> names.addAll(p.serving()));
        return names;
    }
}
