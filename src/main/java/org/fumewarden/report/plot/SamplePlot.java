package org.fumewarden.report.plot;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.fumewarden.model.Count;
import org.fumewarden.model.Figures;

/**
 * Samples on log-probability axes, with the limit and the upper tolerance limit.
 *
 * <p>A lognormal group stands on a straight line. Detected samples and detection limits differ in shape, the three lines
 * in dash and label, so nothing hangs on colour.
 *
 * @param title what was sampled
 * @param unit unit of all concentrations, such as mg/m3
 * @param marks the samples with their plotting positions
 * @param limit exposure limit, above zero
 * @param fit fitted straight line, when there is one
 * @param tolerance upper tolerance limit, when there is one
 * @param expected other lines: what published studies lead to expect, and that together with the samples
 */
public record SamplePlot(
        String title,
        String unit,
        List<Mark> marks,
        double limit,
        Optional<Line> fit,
        OptionalDouble tolerance,
        List<Expected> expected) {

    public SamplePlot {
        marks = List.copyOf(marks);
        expected = List.copyOf(expected);
        boolean good = limit > 0 && Double.isFinite(limit) && marks.stream().allMatch(Mark::valid);
        if (!good || tolerance.isPresent() && !(tolerance.getAsDouble() > 0 && tolerance.getAsDouble() < 1e300)) {
            throw new IllegalArgumentException(
                    "A sample plot needs concentrations and a limit above zero, and shares between 0 and 1.");
        }
    }

    /**
     * One sample.
     *
     * @param concentration the result, or the detection limit
     * @param share estimated share of exposures below it, between 0 and 1
     */
    public record Mark(double concentration, double share, boolean detected) {
        boolean valid() {
            return concentration > 0 && Double.isFinite(concentration) && share > 0 && share < 1;
        }
    }

    /** Mean and standard deviation of the natural logarithms. */
    public record Line(double meanLog, double sdLog) {
        double at(double z) {
            return Math.exp(meanLog + sdLog * z);
        }
    }

    /**
     * A line that does not come from the samples alone.
     *
     * @param sign its character in the plot of characters
     * @param dash its dash pattern
     */
    public record Expected(String name, char sign, String dash, Line line) {
        String words(String unit) {
            return " " + org.apache.commons.lang3.StringUtils.capitalize(name) + ": geometric mean "
                    + Figures.shown(Math.exp(line.meanLog())) + " " + unit + ", geometric standard deviation "
                    + Figures.shown(Math.exp(line.sdLog())) + ".";
        }
    }

    /** The plot as SVG with title and description. */
    public String svg() {
        return SampleSvg.of(this);
    }

    /** The plot in characters, 72 columns wide. */
    public String text() {
        return SampleText.of(this);
    }

    /** The plot in words, for a reader who cannot see it. */
    public String description() {
        long found = marks.stream().filter(Mark::detected).count();
        double highest = marks.stream().mapToDouble(Mark::concentration).max().orElse(0);
        String above = marks.stream().anyMatch(m -> m.detected() && m.concentration() > limit)
                ? "At least one sample is above the limit."
                : "No detected sample is above the limit.";
        String fitted = fit.map(f -> " The fitted geometric mean is " + Figures.shown(Math.exp(f.meanLog())) + " "
                        + unit + ", the geometric standard deviation " + Figures.shown(Math.exp(f.sdLog())) + ".")
                .orElse(" No line was fitted.");
        String bound = tolerance.isPresent()
                ? " The upper tolerance limit is " + Figures.shown(tolerance.getAsDouble()) + " " + unit + ", "
                        + (tolerance.getAsDouble() > limit ? "above" : "not above") + " the limit."
                : " There is no upper tolerance limit.";
        return Count.of(marks.size(), "sample") + ", " + found + " detected, the highest "
                + Figures.shown(highest) + " " + unit + "; limit " + Figures.shown(limit) + " " + unit + ". "
                + above + fitted + bound
                + expected.stream().map(e -> e.words(unit)).collect(java.util.stream.Collectors.joining());
    }

    /** Every concentration the plot has to hold. */
    List<Double> extent() {
        List<Double> all =
                new ArrayList<>(marks.stream().map(Mark::concentration).toList());
        all.add(limit);
        tolerance.ifPresent(all::add);
        return all;
    }
}
