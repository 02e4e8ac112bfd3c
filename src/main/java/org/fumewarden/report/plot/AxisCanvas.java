package org.fumewarden.report.plot;

import java.util.List;
import java.util.Locale;

/** Axes, marks and labels of one SVG plot; every series differs by dash and marker, not by colour alone. */
final class AxisCanvas {
    static final int WIDTH = 640;
    static final int HEIGHT = 400;
    private static final int LEFT = 70;
    private static final int RIGHT = 20;
    private static final int TOP = 50;
    private static final int BOTTOM = 60;
    private static final String[] DASHES = {"none", "8 4", "2 3", "10 3 2 3"};

    private final double xTop;
    private final double yTop;
    private final StringBuilder body = new StringBuilder();

    /** A canvas from zero to the given values. */
    AxisCanvas(double xTop, double yTop) {
        this.xTop = ceiling(xTop);
        this.yTop = ceiling(yTop);
    }

    /** The next 1, 2, 2.5 or 5 times a power of ten, at least the value. */
    static double ceiling(double value) {
        if (!(value > 0) || !Double.isFinite(value)) {
            return 1;
        }
        double power = Math.pow(10, Math.floor(Math.log10(value)));
        for (double step : new double[] {1, 2, 2.5, 5, 10}) {
            if (step * power >= value * (1 - 1e-12)) {
                return step * power;
            }
        }
        return 10 * power;
    }

    double x(double value) {
        return LEFT + Math.min(Math.max(value, 0), xTop) / xTop * (WIDTH - LEFT - RIGHT);
    }

    double y(double value) {
        return HEIGHT - BOTTOM - Math.min(Math.max(value, 0), yTop) / yTop * (HEIGHT - TOP - BOTTOM);
    }

    void axes(String xTitle, String yTitle) {
        for (int i = 0; i <= 5; i++) {
            double xValue = xTop * i / 5;
            double yValue = yTop * i / 5;
            line(x(xValue), y(0), x(xValue), y(0) + 5, "none", 1);
            line(x(0) - 5, y(yValue), x(0), y(yValue), "none", 1);
            text(x(xValue), y(0) + 20, "middle", number(xValue));
            text(x(0) - 9, y(yValue) + 4, "end", number(yValue));
        }
        line(x(0), y(0), x(xTop), y(0), "none", 1);
        line(x(0), y(0), x(0), y(yTop), "none", 1);
        text((x(0) + x(xTop)) / 2, HEIGHT - 18, "middle", xTitle);
        text(12, TOP - 18, "start", yTitle);
    }

    /** A line through points of {x, y}, with its name at the last one. */
    void series(int index, String name, List<double[]> points) {
        StringBuilder path = new StringBuilder();
        for (double[] point : points) {
            path.append(path.isEmpty() ? "M" : " L")
                    .append(at(x(point[0])))
                    .append(' ')
                    .append(at(y(point[1])));
            marker(index, x(point[0]), y(point[1]));
        }
        body.append("<path d=\"")
                .append(path)
                .append("\" fill=\"none\" stroke=\"#222\" stroke-width=\"2\" stroke-dasharray=\"")
                .append(DASHES[index % DASHES.length])
                .append("\"/>\n");
        if (!points.isEmpty()) {
            double[] last = points.get(points.size() - 1);
            text(x(last[0]) - 4, y(last[1]) - 10 - 14 * (index % 2), "end", name);
        }
    }

    private void marker(int index, double x, double y) {
        switch (index % 3) {
            case 0 ->
                body.append("<circle cx=\"")
                        .append(at(x))
                        .append("\" cy=\"")
                        .append(at(y))
                        .append("\" r=\"4\"/>\n");
            case 1 ->
                body.append("<rect x=\"")
                        .append(at(x - 4))
                        .append("\" y=\"")
                        .append(at(y - 4))
                        .append("\" width=\"8\" height=\"8\" fill=\"#fff\" stroke=\"#222\"/>\n");
            default ->
                body.append("<path d=\"M")
                        .append(at(x))
                        .append(' ')
                        .append(at(y - 5))
                        .append(" L")
                        .append(at(x + 5))
                        .append(' ')
                        .append(at(y + 4))
                        .append(" L")
                        .append(at(x - 5))
                        .append(' ')
                        .append(at(y + 4))
                        .append(" Z\"/>\n");
        }
    }

    /** A labelled level across the plot. */
    void level(double value, String label) {
        line(x(0), y(value), x(xTop), y(value), "6 4", 2);
        text(x(0) + 6, y(value) - 6, "start", label);
    }

    /** A labelled moment from bottom to top. */
    void moment(double value, String label) {
        line(x(value), y(0), x(value), y(yTop), "3 3", 2);
        boolean late = value > xTop * 0.6;
        text(x(value) + (late ? -6 : 6), y(yTop) + 12, late ? "end" : "start", label);
    }

    String svg(String title, String description) {
        return "<svg xmlns=\"http://www.w3.org/2000/svg\" role=\"img\" aria-labelledby=\"title desc\" viewBox=\"0 0 "
                + WIDTH + " " + HEIGHT + "\" font-family=\"sans-serif\" font-size=\"13\">\n<title id=\"title\">"
                + escape(title) + "</title>\n<desc id=\"desc\">" + escape(description) + "</desc>\n<rect width=\""
                + WIDTH + "\" height=\"" + HEIGHT + "\" fill=\"#fff\"/>\n" + body + "</svg>\n";
    }

    private void line(double x1, double y1, double x2, double y2, String dash, int width) {
        body.append(String.format(
                Locale.ROOT,
                "<line x1=\"%s\" y1=\"%s\" x2=\"%s\" y2=\"%s\" stroke=\"#222\" stroke-width=\"%d\""
                        + " stroke-dasharray=\"%s\"/>\n",
                at(x1),
                at(y1),
                at(x2),
                at(y2),
                width,
                dash));
    }

    private void text(double x, double y, String anchor, String words) {
        body.append("<text x=\"").append(at(x)).append("\" y=\"").append(at(y)).append("\" text-anchor=\"");
        body.append(anchor).append("\">").append(escape(words)).append("</text>\n");
    }

    private static String at(double value) {
        return String.format(Locale.ROOT, "%.1f", value);
    }

    /** A number without needless digits. */
    static String number(double value) {
        String text = String.format(Locale.ROOT, "%.2f", value);
        return text.contains(".") ? text.replaceAll("0+$", "").replaceAll("\\.$", "") : text;
    }

    static String escape(String words) {
        return words.replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&quot;");
    }
}
