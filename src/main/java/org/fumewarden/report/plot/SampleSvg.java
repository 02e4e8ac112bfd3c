package org.fumewarden.report.plot;

import java.util.Locale;
import java.util.OptionalDouble;
import org.apache.commons.text.StringEscapeUtils;
import org.fumewarden.exposure.StandardNormal;
import org.fumewarden.report.plot.SamplePlot.Mark;

/** Draws a sample plot as SVG. */
final class SampleSvg {
    private static final int LEFT = 70;
    private static final int TOP = 20;
    private static final int WIDTH = 520;
    private static final int HEIGHT = 320;
    private static final int RIGHT = 150;
    private static final int BOTTOM = 60;
    private static final int ABOVE = -3;
    private static final int BELOW = 13;
    private static final String INK = "#1d2b23";
    private static final String GRID = "#c9d2cc";
    private static final String LIMIT = "#8a2f1f";
    private static final String TOLERANCE = "#2f4f8a";

    private final SamplePlot plot;
    private final PlotScale scale;
    private final StringBuilder out = new StringBuilder();

    private SampleSvg(SamplePlot plot) {
        this.plot = plot;
        this.scale = PlotScale.of(plot.extent());
    }

    static String of(SamplePlot plot) {
        return new SampleSvg(plot).draw();
    }

    private String draw() {
        add(
                "<svg xmlns=\"http://www.w3.org/2000/svg\" role=\"img\" viewBox=\"0 0 %d %d\""
                        + " font-family=\"sans-serif\" font-size=\"12\" fill=\"%s\">\n",
                LEFT + WIDTH + RIGHT, TOP + HEIGHT + BOTTOM, INK);
        add("<title>%s</title>\n<desc>%s</desc>\n", escape(plot.title()), escape(plot.description()));
        axes();
        plot.fit().ifPresent(fit -> curve(fit, INK, ""));
        plot.expected().forEach(e -> curve(e.line(), TOLERANCE, e.dash()));
        // The higher of both lines is labelled above, the lower below, so that the labels never meet.
        boolean over = plot.tolerance().orElse(0) >= plot.limit();
        level(OptionalDouble.of(plot.limit()), "limit", LIMIT, "8 4", over ? BELOW : ABOVE);
        level(plot.tolerance(), "tolerance limit", TOLERANCE, "2 3", over ? ABOVE : BELOW);
        plot.marks().forEach(this::mark);
        add("</svg>\n");
        return out.toString();
    }

    private void axes() {
        add(
                "<rect x=\"%d\" y=\"%d\" width=\"%d\" height=\"%d\" fill=\"none\" stroke=\"%s\"/>\n",
                LEFT, TOP, WIDTH, HEIGHT, INK);
        for (double share : PlotScale.SHARES) {
            double x = x(share);
            line(x, TOP, x, TOP + HEIGHT, GRID, "");
            add(
                    "<text x=\"%.1f\" y=\"%d\" text-anchor=\"middle\">%s</text>\n",
                    x, TOP + HEIGHT + 16, PlotScale.percent(share));
        }
        for (double tick : scale.ticks()) {
            double y = y(tick);
            line(LEFT, y, LEFT + WIDTH, y, GRID, "");
            add("<text x=\"%d\" y=\"%.1f\" text-anchor=\"end\">%s</text>\n", LEFT - 6, y + 4, PlotScale.number(tick));
        }
        add(
                "<text x=\"%d\" y=\"%d\" text-anchor=\"middle\">share of exposures below, %%</text>\n",
                LEFT + WIDTH / 2, TOP + HEIGHT + 36);
        add(
                "<text x=\"%d\" y=\"%d\" text-anchor=\"middle\">filled circle: detected; open triangle: below"
                        + " detection limit</text>\n",
                LEFT + WIDTH / 2, TOP + HEIGHT + 54);
        for (int i = 0; i < plot.expected().size(); i++) {
            SamplePlot.Expected each = plot.expected().get(i);
            double y = TOP + 14 + 16.0 * i;
            line(LEFT + 8, y - 4, LEFT + 38, y - 4, TOLERANCE, each.dash());
            add("<text x=\"%d\" y=\"%.1f\" fill=\"%s\">%s</text>\n", LEFT + 44, y, TOLERANCE, escape(each.name()));
        }
        add("<text x=\"4\" y=\"%d\">%s</text>\n", TOP - 6, escape(plot.unit()));
    }

    private void curve(SamplePlot.Line fit, String colour, String dash) {
        double from = PlotScale.quantileAt(0);
        double to = PlotScale.quantileAt(1);
        if (fit.sdLog() > 0) {
            from = Math.max(from, (Math.log(scale.low()) - fit.meanLog()) / fit.sdLog());
            to = Math.min(to, (Math.log(scale.high()) - fit.meanLog()) / fit.sdLog());
        }
        if (from < to) {
            line(
                    x(StandardNormal.below(from)),
                    y(fit.at(from)),
                    x(StandardNormal.below(to)),
                    y(fit.at(to)),
                    colour,
                    dash);
        }
    }

    private void level(OptionalDouble value, String name, String colour, String dash, int shift) {
        if (value.isEmpty()) {
            return;
        }
        double y = y(value.getAsDouble());
        line(LEFT, y, LEFT + WIDTH, y, colour, dash);
        add(
                "<text x=\"%d\" y=\"%.1f\" fill=\"%s\">%s %s</text>\n",
                LEFT + WIDTH + 6, y + shift, colour, name, PlotScale.number(value.getAsDouble()));
    }

    private void mark(Mark mark) {
        double x = x(mark.share());
        double y = y(mark.concentration());
        String words = (mark.detected() ? "" : "below ") + PlotScale.number(mark.concentration()) + " " + plot.unit();
        if (mark.detected()) {
            add(
                    "<circle cx=\"%.1f\" cy=\"%.1f\" r=\"4\" fill=\"%s\"><title>%s</title></circle>\n",
                    x, y, INK, escape(words));
        } else {
            add(
                    "<path d=\"M%.1f %.1f l-5 -8 h10 z\" fill=\"none\" stroke=\"%s\"><title>%s</title></path>\n",
                    x, y, INK, escape(words));
        }
    }

    private void line(double x1, double y1, double x2, double y2, String colour, String dash) {
        add(
                "<line x1=\"%.1f\" y1=\"%.1f\" x2=\"%.1f\" y2=\"%.1f\" stroke=\"%s\"%s/>\n",
                x1, y1, x2, y2, colour, dash.isEmpty() ? "" : " stroke-width=\"2\" stroke-dasharray=\"" + dash + "\"");
    }

    private double x(double share) {
        return LEFT + WIDTH * scale.across(share);
    }

    private double y(double concentration) {
        return TOP + HEIGHT * (1 - scale.up(concentration));
    }

    private void add(String format, Object... values) {
        out.append(String.format(Locale.ROOT, format, values));
    }

    private static String escape(String text) {
        return StringEscapeUtils.escapeXml10(text);
    }
}
