package org.fumewarden.report.plot;

import java.util.List;
import java.util.Locale;

/** Axes, marks and labels of one SVG plot; every series differs by dash and marker, not by colour alone. */
final class AxisCanvas {
    private static final int WIDTH = 640;
    private static final int HEIGHT = 400;
    private static final int LEFT = 70;
    private static final int RIGHT = 20;
    private static final int TOP = 50;
    private static final int BOTTOM = 60;
    private static final String INK = "#222";
    private static final String[] DASHES = {"", "8 4", "2 3", "10 3 2 3"};

    private final double xTop;
    private final double yTop;
    private final SvgCanvas canvas = new SvgCanvas(WIDTH, HEIGHT, INK);

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
            line(x(xValue), y(0), x(xValue), y(0) + 5, "");
            line(x(0) - 5, y(yValue), x(0), y(yValue), "");
            text(x(xValue), y(0) + 20, "middle", number(xValue));
            text(x(0) - 9, y(yValue) + 4, "end", number(yValue));
        }
        line(x(0), y(0), x(xTop), y(0), "");
        line(x(0), y(0), x(0), y(yTop), "");
        text((x(0) + x(xTop)) / 2, HEIGHT - 18, "middle", xTitle);
        text(12, TOP - 18, "start", yTitle);
    }

    /** A line through points of {x, y}, with its name at the last one. */
    void series(int index, String name, List<double[]> points) {
        for (int i = 0; i < points.size(); i++) {
            double x = x(points.get(i)[0]);
            double y = y(points.get(i)[1]);
            marker(index, x, y);
            if (i > 0) {
                double[] before = points.get(i - 1);
                canvas.line(x(before[0]), y(before[1]), x, y, INK, DASHES[index % DASHES.length]);
            }
        }
        if (!points.isEmpty()) {
            double[] last = points.get(points.size() - 1);
            text(x(last[0]) - 4, y(last[1]) - 10 - 14 * (index % 2), "end", name);
        }
    }

    private void marker(int index, double x, double y) {
        switch (index % 3) {
            case 0 -> canvas.circle(x, y, "");
            case 1 -> canvas.rect(x - 4, y - 4, 8, 8, "#fff");
            default -> canvas.path(x, y - 5, " l5 9 h-10 z", "");
        }
    }

    /** A labelled level across the plot. */
    void level(double value, String label) {
        line(x(0), y(value), x(xTop), y(value), "6 4");
        text(x(0) + 6, y(value) - 6, "start", label);
    }

    /** A labelled moment from bottom to top. */
    void moment(double value, String label) {
        line(x(value), y(0), x(value), y(yTop), "3 3");
        boolean late = value > xTop * 0.6;
        text(x(value) + (late ? -6 : 6), y(yTop) + 12, late ? "end" : "start", label);
    }

    String svg(String title, String description) {
        return canvas.svg(title, description);
    }

    private void line(double x1, double y1, double x2, double y2, String dash) {
        canvas.line(x1, y1, x2, y2, INK, dash);
    }

    private void text(double x, double y, String anchor, String words) {
        canvas.text(x, y, anchor, INK, words);
    }

    /** A number without needless digits. */
    static String number(double value) {
        String text = String.format(Locale.ROOT, "%.2f", value);
        return text.contains(".") ? text.replaceAll("0+$", "").replaceAll("\\.$", "") : text;
    }
}
