package org.fumewarden.report.plot;

import java.util.Arrays;
import org.apache.commons.lang3.StringUtils;
import org.fumewarden.model.Figures;
import org.fumewarden.report.plot.SamplePlot.Mark;

/** Draws a sample plot in characters. */
final class SampleText {
    private static final int ROWS = 17;
    private static final int COLUMNS = 61;
    private static final int LABEL = 9;

    private final SamplePlot plot;
    private final PlotScale scale;
    private final char[][] cells = new char[ROWS][COLUMNS];
    private final String[] labels = new String[ROWS];

    private SampleText(SamplePlot plot) {
        this.plot = plot;
        this.scale = PlotScale.of(plot.extent());
        for (char[] row : cells) {
            Arrays.fill(row, ' ');
        }
        Arrays.fill(labels, "");
    }

    static String of(SamplePlot plot) {
        return new SampleText(plot).draw();
    }

    private String draw() {
        scale.ticks().forEach(tick -> labels[row(tick)] = PlotScale.number(tick));
        plot.expected().forEach(e -> curve(e.line(), e.sign()));
        plot.fit().ifPresent(fit -> curve(fit, '.'));
        plot.tolerance().ifPresent(value -> level(value, '='));
        level(plot.limit(), '-');
        plot.marks().forEach(this::mark);
        StringBuilder out = new StringBuilder();
        out.append(plot.title()).append(", ").append(plot.unit()).append('\n');
        for (int row = 0; row < ROWS; row++) {
            String line = StringUtils.leftPad(labels[row], LABEL) + " |" + new String(cells[row]);
            out.append(StringUtils.stripEnd(line, " ")).append('\n');
        }
        out.append(StringUtils.repeat(' ', LABEL + 1))
                .append('+')
                .append(StringUtils.repeat('-', COLUMNS))
                .append('\n');
        out.append(shares()).append('\n');
        out.append(StringUtils.repeat(' ', LABEL + 2)).append("share of exposures below, %\n");
        out.append(legend());
        return out.toString();
    }

    private String legend() {
        String tolerance = plot.tolerance().isPresent()
                ? "  = tolerance limit " + Figures.shown(plot.tolerance().getAsDouble())
                : "";
        return StringUtils.repeat(' ', LABEL + 2) + "o detected  v below detection limit"
                + (plot.fit().isPresent() ? "  . fit" : "") + "\n" + StringUtils.repeat(' ', LABEL + 2) + "- limit "
                + Figures.shown(plot.limit()) + tolerance + "\n"
                + plot.expected().stream()
                        .map(e -> StringUtils.repeat(' ', LABEL + 2) + e.sign() + " " + e.name() + "\n")
                        .collect(java.util.stream.Collectors.joining());
    }

    private String shares() {
        StringBuilder line = new StringBuilder(StringUtils.repeat(' ', LABEL + 2 + COLUMNS + 2));
        for (double share : PlotScale.SHARES) {
            String words = PlotScale.percent(share);
            int at = LABEL + 2 + column(share);
            line.replace(at, at + words.length(), words);
        }
        return StringUtils.stripEnd(line.toString(), " ");
    }

    private void curve(SamplePlot.Line fit, char sign) {
        for (int column = 0; column < COLUMNS; column++) {
            double up = scale.up(fit.at(PlotScale.quantileAt(column / (COLUMNS - 1.0))));
            if (up >= 0 && up <= 1) {
                cells[rowAt(up)][column] = sign;
            }
        }
    }

    private void level(double value, char sign) {
        char[] row = cells[row(value)];
        for (int column = 0; column < COLUMNS; column++) {
            row[column] = row[column] == ' ' ? sign : row[column];
        }
    }

    private void mark(Mark mark) {
        cells[row(mark.concentration())][column(mark.share())] = mark.detected() ? 'o' : 'v';
    }

    private int row(double concentration) {
        return rowAt(scale.up(concentration));
    }

    private static int rowAt(double up) {
        return ROWS - 1 - (int) Math.round(up * (ROWS - 1));
    }

    private int column(double share) {
        return (int) Math.round(scale.across(share) * (COLUMNS - 1));
    }
}
