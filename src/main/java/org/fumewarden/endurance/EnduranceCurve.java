package org.fumewarden.endurance;

import java.util.List;
import java.util.Optional;

/**
 * The user's own curve for one pack: clogging stage against hours of run time.
 *
 * @param pack name of the pack the curve belongs to
 * @param points by rising stage, hours never rising
 * @param toReserve true when the hours end at the reserve alarm, false when they end with an empty pack
 */
public record EnduranceCurve(String pack, List<Point> points, boolean toReserve) {

    /** Hours of a full pack at a clogging stage. */
    public record Point(double stage, double hours) {}

    public EnduranceCurve {
        points = List.copyOf(points);
        fault(pack, points).ifPresent(refused -> {
            throw new IllegalArgumentException(refused.sentence());
        });
    }

    /** A checked curve, or what is wrong with it. */
    public static Reckoning<EnduranceCurve> of(String pack, List<Point> points, boolean toReserve) {
        return fault(pack, points)
                .<Reckoning<EnduranceCurve>>map(refused -> refused)
                .orElseGet(() -> Reckoning.of(new EnduranceCurve(pack, points, toReserve)));
    }

    private static Optional<Refused<EnduranceCurve>> fault(String pack, List<Point> points) {
        if (points.size() < 2) {
            return refuse(
                    Refusal.OUTSIDE_TABLE,
                    "The curve of " + pack + " has " + points.size()
                            + " points and needs two or more. Maybe measure another clogging stage.");
        }
        for (int i = 0; i < points.size(); i++) {
            Point point = points.get(i);
            Point before = points.get(Math.max(0, i - 1));
            if (!Double.isFinite(point.stage()) || !Double.isFinite(point.hours()) || point.hours() < 0) {
                return refuse(
                        Refusal.BAD_NUMBER,
                        "The curve of " + pack + " has the point " + point + ". Maybe a number is missing.");
            }
            if (i > 0 && before.stage() >= point.stage()) {
                return refuse(
                        Refusal.NOT_MONOTONE,
                        "The stages of " + pack + " must rise: " + before.stage() + " before " + point.stage()
                                + ". Maybe sort the points.");
            }
            if (before.hours() < point.hours()) {
                return refuse(
                        Refusal.NOT_MONOTONE,
                        "A more clogged filter cannot run longer: " + before + " before " + point + " of " + pack
                                + ". Maybe two hours were swapped.");
            }
        }
        return Optional.empty();
    }

    private static Optional<Refused<EnduranceCurve>> refuse(Refusal reason, String sentence) {
        return Optional.of(new Refused<>(reason, sentence));
    }

    /**
     * Hours at a stage; straight line between the neighbours, with the worse neighbour as low and the better as high end.
     *
     * <p>Any curve that never rises lies between its neighbours, so the range holds whatever its shape. Never beyond the
     * table.
     */
    public Reckoning<Span> hours(double stage) {
        for (int i = 0; i < points.size(); i++) {
            Point here = points.get(i);
            if (here.stage() == stage) {
                return Reckoning.of(Span.exactly(here.hours()));
            }
            if (i > 0 && points.get(i - 1).stage() < stage && stage < here.stage()) {
                Point before = points.get(i - 1);
                double part = (stage - before.stage()) / (here.stage() - before.stage());
                double line = before.hours() + (here.hours() - before.hours()) * part;
                return Reckoning.of(
                        new Span(here.hours(), Math.max(here.hours(), Math.min(before.hours(), line)), before.hours()));
            }
        }
        return Reckoning.refuse(
                Refusal.OUTSIDE_TABLE,
                "Stage " + stage + " is outside the curve of " + pack + ", "
                        + Figures.plain(points.get(0).stage())
                        + " to " + Figures.plain(points.get(points.size() - 1).stage())
                        + ". Maybe read the display again, or replace the filter.");
    }

    /**
     * Minutes to the reserve for a pack that is not new, full and warm.
     *
     * @param charge state of charge, 0 to 1
     * @param share of the rated energy that age and cold leave
     * @param rules of the pack
     */
    public Reckoning<RunTime> runTime(double stage, double charge, Span share, PackRules rules) {
        Reckoning<Span> hours = hours(stage);
        if (hours instanceof Refused<Span> refused) {
            return refused.as();
        }
        if (!(charge > rules.reserve() && charge <= 1)) {
            return Reckoning.refuse(
                    Refusal.BELOW_RESERVE,
                    "A charge of " + charge + " is not between the reserve of " + rules.reserve()
                            + " and full. Maybe fit a charged pack.");
        }
        double above = (charge - rules.reserve()) / (toReserve ? 1 - rules.reserve() : 1);
        Span minutes = hours.value().orElseThrow().times(share).map(each -> each * 60 * above);
        return Reckoning.of(new RunTime(minutes, RunTime.End.RESERVE, RunTime.Basis.OWN_CURVE));
    }
}
