package org.fumewarden.exposure;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.DoubleSupplier;
import org.fumewarden.model.Reckoning;

/** Measures the error of our own numerics against stored reference values. */
public final class NumericsSelfCheck {
    private final List<Line> lines = new ArrayList<>();

    private NumericsSelfCheck() {}

    /**
     * One function.
     *
     * @param cases values compared
     * @param largestError largest relative error found
     * @param allowed largest relative error that we promise
     * @param reference where the reference values come from
     */
    public record Line(String function, int cases, double largestError, double allowed, String reference) {
        /** True when the promise holds. */
        public boolean kept() {
            return largestError <= allowed;
        }
    }

    /** The errors, one line for each function. */
    public static List<Line> measure() {
        NumericsSelfCheck check = new NumericsSelfCheck();
        check.tolerance("tolerance factor 95/70", 0.95, 0.70, ReferenceNumbers.K_95_70);
        check.tolerance("tolerance factor 95/95", 0.95, 0.95, ReferenceNumbers.K_95_95);
        check.tolerance("tolerance factor 90/99", 0.90, 0.99, ReferenceNumbers.K_90_99);
        check.tolerance("tolerance factor 95, lower", 0.95, 0.05, ReferenceNumbers.K_95_05);
        check.land();
        check.exceedance();
        check.likelihood();
        check.shape();
        check.rooms();
        return List.copyOf(check.lines);
    }

    /** The errors as a table of text. */
    public static String text() {
        StringBuilder out = new StringBuilder("Largest relative error of our own numerics\n");
        for (Line line : measure()) {
            out.append(String.format(
                    Locale.ROOT,
                    "%-28s %3d values  %8.1e  (promised %7.0e, %s)  %s%n",
                    line.function(),
                    line.cases(),
                    line.largestError(),
                    line.allowed(),
                    line.kept() ? "kept" : "BROKEN",
                    line.reference()));
        }
        return out.toString().replace("\r\n", "\n");
    }

    private void tolerance(String name, double coverage, double confidence, double[] expected) {
        Errors errors = new Errors();
        for (int i = 0; i < expected.length; i++) {
            int n = ReferenceNumbers.SIZES[i];
            errors.add(expected[i], () -> number(ToleranceFactor.of(n, coverage, confidence)));
        }
        lines.add(errors.line(name, 1e-10, "mpmath 1.3.0, 30 digits"));
    }

    private void land() {
        Errors errors = new Errors();
        for (double[] row : ReferenceNumbers.LAND) {
            errors.add(row[3], () -> number(LandMean.factor((int) row[0], row[1], row[2])));
        }
        lines.add(errors.line("Land factor of the mean", 1e-9, "mpmath 1.3.0, 30 digits"));
    }

    private void exceedance() {
        Exceedance found = SampleSet.found(ReferenceNumbers.AIR)
                .then(set -> Exceedance.of(set, 5, 0.95))
                .value()
                .orElse(new Exceedance(-1, -1, -1));
        Errors errors = new Errors();
        errors.add(ReferenceNumbers.AIR_ABOVE_5[0], found::lower);
        errors.add(ReferenceNumbers.AIR_ABOVE_5[1], found::upper);
        lines.add(errors.line("limits of share above", 1e-10, "mpmath 1.3.0, 30 digits"));
    }

    private void likelihood() {
        List<Sample> samples = new ArrayList<>();
        for (double value : ReferenceNumbers.MANGANESE) {
            samples.add(value > 0 ? Sample.found(value) : Sample.below(-value));
        }
        Reckoning<LognormalFit> fit = SampleSet.of(samples).then(LognormalFits::of);
        Errors errors = new Errors();
        errors.add(ReferenceNumbers.MANGANESE_FIT[0], () -> number(fit.map(LognormalFit::meanLog)));
        errors.add(ReferenceNumbers.MANGANESE_FIT[1], () -> number(fit.map(LognormalFit::sdLog)));
        lines.add(errors.line("censored likelihood", 1e-9, "mpmath 1.3.0, 30 digits"));
    }

    private void shape() {
        Errors errors = new Errors();
        double[][] sets = {ReferenceNumbers.AIR, ReferenceNumbers.CHROMIUM};
        for (int i = 0; i < sets.length; i++) {
            Reckoning<SampleSet> set = SampleSet.found(sets[i]);
            errors.add(
                    ReferenceNumbers.SHAPIRO[i],
                    () -> number(set.then(ShapiroWilk::ofLogs).map(ShapiroWilk::statistic)));
        }
        lines.add(errors.line("Shapiro-Wilk W", 1e-8, "scipy 1.17.1"));
    }

    private void rooms() {
        Errors errors = new Errors();
        for (double[] row : ReferenceNumbers.TWO_ZONES) {
            TwoZoneRoom room = new TwoZoneRoom(row[0], row[1], row[2], row[3], row[4]);
            TwoZoneRoom.Fields end = room.after(row[5], TwoZoneRoom.Fields.CLEAN);
            TwoZoneRoom.Fields average = room.average(row[5], TwoZoneRoom.Fields.CLEAN);
            errors.add(row[6], end::near);
            errors.add(row[7], end::far);
            errors.add(row[8], average::near);
            errors.add(row[9], average::far);
        }
        for (double[] row : ReferenceNumbers.MIXED) {
            WellMixedRoom room = new WellMixedRoom(row[0], row[1], row[2], row[3], row[4]);
            errors.add(row[7], () -> number(room.after(row[6], row[5])));
            errors.add(row[8], () -> number(room.average(row[6], row[5])));
        }
        lines.add(errors.line("rooms", 2e-8, "scipy 1.17.1, DOP853"));
    }

    private static double number(Reckoning<Double> outcome) {
        return outcome.value().orElse(Double.MAX_VALUE);
    }

    /** Gathers relative errors. */
    private static final class Errors {
        private int cases;
        private double largest;

        void add(double expected, DoubleSupplier own) {
            cases++;
            largest = Math.max(largest, Math.abs(own.getAsDouble() - expected) / Math.abs(expected));
        }

        Line line(String function, double allowed, String reference) {
            return new Line(function, cases, largest, allowed, reference);
        }
    }
}
