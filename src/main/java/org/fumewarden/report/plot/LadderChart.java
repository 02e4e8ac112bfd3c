package org.fumewarden.report.plot;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.apache.commons.lang3.StringUtils;
import org.apache.commons.text.StringEscapeUtils;

/** A ladder: for each class a bar over the values at which it still serves. */
public final class LadderChart {
    private static final int COLUMNS = 60;
    private static final int LEFT = 260;
    private static final int WIDTH = 600;
    private static final int ROW = 22;

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
        List<String> names = new ArrayList<>(classes(points));
        int height = 60 + ROW * Math.max(1, names.size());
        StringBuilder svg = new StringBuilder();
        svg.append(String.format(
                Locale.ROOT,
                "<svg xmlns=\"http://www.w3.org/2000/svg\" role=\"img\" viewBox=\"0 0 %d %d\""
                        + " font-family=\"sans-serif\" font-size=\"12\">%n",
                LEFT + WIDTH + 20,
                height));
        svg.append("<title>Suitable classes, against ").append(escape(axis)).append("</title>\n<desc>");
        for (String name : names) {
            svg.append(escape(name))
                    .append(" serves ")
                    .append(escape(ranges(name, points)))
                    .append(". ");
        }
        svg.append("</desc>\n");
        for (int row = 0; row < names.size(); row++) {
            bars(svg, names.get(row), row, points);
        }
        svg.append(String.format(
                Locale.ROOT,
                "<text x=\"%d\" y=\"%d\">%s</text><text x=\"%d\" y=\"%d\" text-anchor=\"end\">%s</text>%n",
                LEFT,
                height - 24,
                points.get(0).value().toPlainString(),
                LEFT + WIDTH,
                height - 24,
                points.get(points.size() - 1).value().toPlainString()));
        svg.append(String.format(
                Locale.ROOT, "<text x=\"%d\" y=\"%d\">%s</text>%n</svg>%n", LEFT, height - 6, escape(axis)));
        return svg.toString().replace("\r\n", "\n");
    }

    private static void bars(StringBuilder svg, String name, int row, List<Point> points) {
        int y = 10 + ROW * row;
        svg.append(String.format(Locale.ROOT, "<text x=\"4\" y=\"%d\">%s</text>%n", y + 14, escape(name)));
        double step = (double) WIDTH / points.size();
        int start = -1;
        for (int i = 0; i <= points.size(); i++) {
            boolean serves = i < points.size() && points.get(i).serving().contains(name);
            if (serves && start < 0) {
                start = i;
            } else if (!serves && start >= 0) {
                svg.append(String.format(
                        Locale.ROOT,
                        "<rect x=\"%.1f\" y=\"%d\" width=\"%.1f\" height=\"%d\" fill=\"#4a6b57\""
                                + " stroke=\"#1d2b23\"/>%n",
                        LEFT + start * step,
                        y + 3,
                        (i - start) * step,
                        ROW - 8));
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

    private static String escape(String text) {
        return StringEscapeUtils.escapeXml10(text);
    }
}
