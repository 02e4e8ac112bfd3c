package org.fumewarden.report.plot;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import org.fumewarden.exposure.StandardNormal;

/**
 * Log-probability axes: shares across, concentrations upwards.
 *
 * @param low lowest concentration shown
 * @param high highest concentration shown
 */
record PlotScale(double low, double high) {
    private static final double EDGE = 0.005;
    private static final double MARGIN = 1.3;
    private static final int MOST_TICKS = 9;

    /** Shares that get a tick. */
    static final List<Double> SHARES = List.of(0.01, 0.05, 0.2, 0.5, 0.8, 0.95, 0.99);

    static PlotScale of(List<Double> concentrations) {
        double low = concentrations.stream().mapToDouble(c -> c).min().orElse(1);
        double high = concentrations.stream().mapToDouble(c -> c).max().orElse(1);
        return new PlotScale(low / MARGIN, high * MARGIN);
    }

    /** 0 at the left edge, 1 at the right; shares beyond the edges stay on them. */
    double across(double share) {
        double edge = StandardNormal.quantile(1 - EDGE);
        double z = StandardNormal.quantile(Math.max(EDGE, Math.min(1 - EDGE, share)));
        return (z + edge) / (2 * edge);
    }

    /** The quantile at a place between the edges. */
    static double quantileAt(double across) {
        double edge = StandardNormal.quantile(1 - EDGE);
        return (2 * across - 1) * edge;
    }

    /** 0 at the bottom, 1 at the top. */
    double up(double concentration) {
        return Math.log(concentration / low) / Math.log(high / low);
    }

    /** Round concentrations to mark: powers of ten with 2 and 5, or the powers alone when there are many. */
    List<Double> ticks() {
        List<Double> fine = ticks(1, 2, 5);
        if (fine.size() <= MOST_TICKS) {
            return fine;
        }
        return ticks(1);
    }

    private List<Double> ticks(int... steps) {
        List<Double> ticks = new ArrayList<>();
        int first = (int) Math.floor(Math.log10(low));
        int last = (int) Math.ceil(Math.log10(high));
        for (int power = first; power <= last; power++) {
            for (int step : steps) {
                double tick = new BigDecimal(step).scaleByPowerOfTen(power).doubleValue();
                if (tick >= low && tick <= high) {
                    ticks.add(tick);
                }
            }
        }
        return ticks;
    }

    /** Three digits for reading. */
    static String number(double value) {
        BigDecimal rounded = BigDecimal.valueOf(value)
                .round(new MathContext(3, RoundingMode.HALF_UP))
                .stripTrailingZeros();
        boolean plain = rounded.scale() <= 7 && rounded.precision() - rounded.scale() <= 7;
        return plain ? rounded.toPlainString() : rounded.toString();
    }

    /** A share in per cent. */
    static String percent(double share) {
        return number(share * 100);
    }
}
