package org.fumewarden.whatif;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentSkipListMap;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.fumewarden.advice.Advice;
import org.fumewarden.advice.Bench;
import org.fumewarden.advice.Check;
import org.fumewarden.advice.Reason;
import org.fumewarden.advice.Respirator;

/** Varies one number of a task and finds the values at which the advice turns. */
public final class Sweep {
    /** Relative width at which a bisection has closed in on a border. */
    private static final BigDecimal NARROW = new BigDecimal("1e-13");

    /** How far above a border the advice is shown, the nearest first that is a plain number. */
    private static final List<String> STEPS = List.of("1.1", "1.05", "1.02", "1.01", "1.001");

    private static final MathContext FEW = new MathContext(4);
    private static final MathContext CONTEXT = MathContext.DECIMAL64;

    private final Bench bench;
    private final String path;
    private final String unit;
    private final Map<BigDecimal, Advice> tried = new ConcurrentSkipListMap<>();

    /**
     * A sweep of one value.
     *
     * @param path what varies, for example {@code exposures.manganese-respirable.twa}
     * @param unit written after each number
     */
    public Sweep(Bench bench, String path, String unit) {
        this.bench = bench;
        this.path = path;
        this.unit = unit;
    }

    /**
     * A value at which the advice turns.
     *
     * @param at the border itself
     * @param inclusive true when the border still belongs to the advice below it
     * @param shown the value above the border at which the advice is shown
     * @param turned what is different there
     */
    public record TippingPoint(BigDecimal at, boolean inclusive, BigDecimal shown, Advice before, Advice after) {
        /** What turned. */
        public List<Difference> turned() {
            return Differences.between(before, after);
        }
    }

    /** A point of the sweep. */
    public record Point(BigDecimal value, Advice advice) {}

    /** The advice at evenly spaced points from one value to the other; evenly in ratio when both are above zero. */
    public List<Point> points(BigDecimal from, BigDecimal to, int count) {
        // The first point makes the advisor ready; the others do not depend on each other.
        advice(from);
        return IntStream.range(0, count)
                .parallel()
                .mapToObj(i -> i == 0 ? from : i == count - 1 ? to : between(from, to, (double) i / (count - 1)))
                .map(value -> new Point(value, advice(value)))
                .toList();
    }

    /** The tipping points between two values, each found by bisection to the shortest decimal at the border. */
    public List<TippingPoint> tippingPoints(BigDecimal from, BigDecimal to, int grid) {
        List<Point> points = points(from, to, grid);
        List<TippingPoint> tipping = new ArrayList<>();
        for (int i = 1; i < points.size(); i++) {
            search(points.get(i - 1).value(), points.get(i).value(), tipping);
        }
        return tipping;
    }

    private void search(BigDecimal low, BigDecimal high, List<TippingPoint> into) {
        if (outcome(low).equals(outcome(high))) {
            return;
        }
        BigDecimal below = low;
        BigDecimal above = high;
        String start = outcome(low);
        while (above.subtract(below).compareTo(above.abs().multiply(NARROW)) > 0) {
            BigDecimal middle = below.add(above).divide(BigDecimal.valueOf(2), CONTEXT);
            if (middle.compareTo(below) <= 0 || middle.compareTo(above) >= 0) {
                break;
            }
            if (outcome(middle).equals(start)) {
                below = middle;
            } else {
                above = middle;
            }
        }
        BigDecimal border = shortest(below, above);
        boolean inclusive = outcome(border).equals(start);
        BigDecimal shown = plain(border, above, high);
        into.add(new TippingPoint(border, inclusive, shown, advice(inclusive ? border : below), advice(shown)));
        search(above, high, into);
    }

    /** A plain number somewhat above a border where the advice is still that of just above it; else just above it. */
    private BigDecimal plain(BigDecimal border, BigDecimal above, BigDecimal high) {
        for (String step : STEPS) {
            BigDecimal candidate =
                    border.multiply(new BigDecimal(step)).round(FEW).stripTrailingZeros();
            if (candidate.compareTo(above) > 0
                    && candidate.compareTo(high) <= 0
                    && outcome(candidate).equals(outcome(above))) {
                return candidate;
            }
        }
        return above;
    }

    /** The decimal with the fewest digits from {@code low} to {@code high}, both included. */
    static BigDecimal shortest(BigDecimal low, BigDecimal high) {
        int scale = Math.max(0, Math.max(low.scale(), high.scale()));
        for (int digits = -12; digits <= scale; digits++) {
            BigDecimal candidate = low.setScale(digits, RoundingMode.CEILING);
            if (candidate.compareTo(high) <= 0) {
                return candidate.stripTrailingZeros();
            }
        }
        return high;
    }

    private static BigDecimal between(BigDecimal from, BigDecimal to, double share) {
        double low = from.doubleValue();
        double high = to.doubleValue();
        double value = low > 0 && high > 0 ? low * Math.pow(high / low, share) : low + share * (high - low);
        return new BigDecimal(value, new MathContext(6));
    }

    private Advice advice(BigDecimal value) {
        return tried.computeIfAbsent(value, v -> bench.advise(Map.of(path, (v.toPlainString() + " " + unit).strip())));
    }

    /** What a reader would act on: status, class, verdicts, filters, duties, stops, disagreement and controls; not the number itself. */
    private String outcome(BigDecimal value) {
        Advice advice = advice(value);
        return advice.status().key()
                + advice.respirators().stream()
                        .map(r -> r.deviceClass() + "=" + r.verdict().key() + "/" + r.filter())
                        .collect(Collectors.joining(",", "[", "]"))
                + advice.checks().stream().map(Check::id).collect(Collectors.joining(",", "[", "]"))
                + advice.filters().stream().map(Reason::says).collect(Collectors.joining(",", "[", "]"))
                + held(advice.stops())
                + held(advice.conflicts())
                + held(advice.controlsFirst());
    }

    /** Which rules hold and of what, without the numbers in their sentences. */
    private static String held(List<Reason> reasons) {
        return reasons.stream().map(r -> r.rule() + "/" + r.subject()).collect(Collectors.joining(",", "[", "]"));
    }

    /** The suitable classes at a point, recommended first. */
    public static List<Respirator> serving(Advice advice) {
        return advice.respirators().stream().filter(r -> r.verdict().offered()).toList();
    }
}
