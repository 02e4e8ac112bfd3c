package org.fumewarden.report.plot;

import java.util.OptionalDouble;
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
    private final SvgCanvas canvas = new SvgCanvas(LEFT + WIDTH + RIGHT, TOP + HEIGHT + BOTTOM, INK);

    private SampleSvg(SamplePlot plot) {
        this.plot = plot;
        this.scale = PlotScale.of(plot.extent());
    }

    static String of(SamplePlot plot) {
        return new SampleSvg(plot).draw();
    }

    private String draw() {
        axes();
        plot.fit().ifPresent(fit -> curve(fit, INK, ""));
        plot.expected().forEach(e -> curve(e.line(), TOLERANCE, e.dash()));
        // The higher of both lines is labelled above, the lower below, so that the labels never meet.
        boolean over = plot.tolerance().orElse(0) >= plot.limit();
        level(OptionalDouble.of(plot.limit()), "limit", LIMIT, "8 4", over ? BELOW : ABOVE);
        level(plot.tolerance(), "tolerance limit", TOLERANCE, "2 3", over ? ABOVE : BELOW);
        plot.marks().forEach(this::mark);
        return canvas.svg(plot.title(), plot.description());
    }

    private void axes() {
        canvas.rect(LEFT, TOP, WIDTH, HEIGHT, "none");
        for (double share : PlotScale.SHARES) {
            double x = x(share);
            canvas.line(x, TOP, x, TOP + HEIGHT, GRID, "");
            canvas.text(x, TOP + HEIGHT + 16, "middle", INK, PlotScale.percent(share));
        }
        for (double tick : scale.ticks()) {
            double y = y(tick);
            canvas.line(LEFT, y, LEFT + WIDTH, y, GRID, "");
            canvas.text(LEFT - 6, y + 4, "end", INK, PlotScale.number(tick));
        }
        double middle = LEFT + WIDTH / 2.0;
        canvas.text(middle, TOP + HEIGHT + 36, "middle", INK, "share of exposures below, %");
        canvas.text(
                middle,
                TOP + HEIGHT + 54,
                "middle",
                INK,
                "filled circle: detected; open triangle: below detection limit");
        for (int i = 0; i < plot.expected().size(); i++) {
            SamplePlot.Expected each = plot.expected().get(i);
            double y = TOP + 14 + 16.0 * i;
            canvas.line(LEFT + 8, y - 4, LEFT + 38, y - 4, TOLERANCE, each.dash());
            canvas.text(LEFT + 44, y, "start", TOLERANCE, each.name());
        }
        canvas.text(4, TOP - 6, "start", INK, plot.unit());
    }

    private void curve(SamplePlot.Line fit, String colour, String dash) {
        double from = PlotScale.quantileAt(0);
        double to = PlotScale.quantileAt(1);
        if (fit.sdLog() > 0) {
            from = Math.max(from, (Math.log(scale.low()) - fit.meanLog()) / fit.sdLog());
            to = Math.min(to, (Math.log(scale.high()) - fit.meanLog()) / fit.sdLog());
        }
        if (from < to) {
            canvas.line(
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
        canvas.line(LEFT, y, LEFT + WIDTH, y, colour, dash);
        String words = name + " " + PlotScale.number(value.getAsDouble());
        canvas.text(LEFT + WIDTH + 6, y + shift, "start", colour, words);
    }

    private void mark(Mark mark) {
        double x = x(mark.share());
        double y = y(mark.concentration());
        String words = (mark.detected() ? "" : "below ") + PlotScale.number(mark.concentration()) + " " + plot.unit();
        if (mark.detected()) {
            canvas.circle(x, y, words);
        } else {
            canvas.path(x, y, " l-5 -8 h10 z", words);
        }
    }

    private double x(double share) {
        return LEFT + WIDTH * scale.across(share);
    }

    private double y(double concentration) {
        return TOP + HEIGHT * (1 - scale.up(concentration));
    }
}
