package org.fumewarden.report.plot;

import java.math.BigDecimal;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.apache.commons.lang3.StringUtils;

/** A ladder: for each class a bar over the values at which it still serves. */
public final class LadderChart {
    private static final int COLUMNS = 60;
    private static final int LEFT = 260;
    private static final int WIDTH = 600;
    private static final int ROW = 22;
    private static final String INK = "#1d2b23";

    private LadderChart() {}

    /** One point: the value and the classes that serve there. */
    public record Point(BigDecimal value, List<String> serving) {}

    /** The chart in characters: {@code #} serves, {@code .} does not. */
    public static String text(String axis, List<Point> points) {
        StringBuilder out = new StringBuilder();
        int label = classes(points).stream().mapToInt(String::length).max().orElse(0) + 2;
        for (String name : classes(points)) {
            out.append(StringUtils.rightPad(name, label));
            for (int column = 0; column < COLUMNS; column++) {
                Point at = points.get(column * (points.size() - 1) / (COLUMNS - 1));
                out.append(at.serving().contains(name) ? '#' : '.');
            }
            out.append('\n');
        }
        String first = points.get(0).value().toPlainString();
        String last = points.get(points.size() - 1).value().toPlainString();
        out.append(StringUtils.repeat(' ', label)).append(first);
        out.append(StringUtils.leftPad(last, COLUMNS - first.length())).append('\n');
        out.append(StringUtils.repeat(' ', label)).append(axis).append(" (# suitable, . not)\n");
        return out.toString();
    }

    /** The chart as an accessible SVG: bars carry their range as text, colour is never the only sign. */
    public static String svg(String axis, List<Point> points) {
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
                .map(name -> name + " serves " + ranges(name, points) + ". ")
                .collect(Collectors.joining());
        return canvas.svg("Suitable classes, against " + axis, description);
    }

    private static void bars(SvgCanvas canvas, String name, int row, List<Point> points) {
        int y = 10 + ROW * row;
        canvas.text(4, y + 14, "start", INK, name);
        double step = (double) WIDTH / points.size();
        int start = -1;
        for (int i = 0; i <= points.size(); i++) {
            boolean serves = i < points.size() && points.get(i).serving().contains(name);
            if (serves && start < 0) {
                start = i;
            } else if (!serves && start >= 0) {
                canvas.rect(LEFT + start * step, y + 3, (i - start) * step, ROW - 8, "#4a6b57");
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
        return "from " + from.toPlainString() + " to " + to.toPlainString();
    }

    private static Set<String> classes(List<Point> points) {
        Set<String> names = new LinkedHashSet<>();
        points.forEach(p -> names.addAll(p.serving()));
        return names;
    }
}
