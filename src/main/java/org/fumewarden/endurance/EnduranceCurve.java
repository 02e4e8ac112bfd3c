package org.fumewarden.endurance;

import java.util.List;
import java.util.Optional;
import org.fumewarden.model.Reckoning;
import org.fumewarden.model.Refused;
import org.fumewarden.model.Soundness;

/**
 * The user's own curve for one pack: filter resistance against hours of run time.
 *
 * @param pack the user's own id of the pack the curve belongs to
 * @param points by rising resistance, hours never rising
 * @param scale how the points tell the resistance
 * @param toReserve true when the hours end at the reserve alarm, false when they end with an empty pack
 */
public record EnduranceCurve(String pack, List<Point> points, Scale scale, boolean toReserve) {

    /** How the points of a curve tell the filter resistance. */
    public enum Scale {
        /** Pressure drop of one filter in pascal. */
        PASCAL("Pa"),
        /** Per cent of the pressure at which the unit warns of a clogged filter. */
        SHARE("% of the warning pressure"),
        /** The user's own points, such as the marks of a gauge. */
        OWN("");

        private final String unit;

        Scale(String unit) {
            this.unit = unit;
        }

        /** A point in words. */
        public String words(String number) {
            return unit.isEmpty() ? "point " + number : number + " " + unit;
        }
    }

    /** Hours of a full pack at a filter resistance. */
    public record Point(double at, double hours) {}

    public EnduranceCurve {
        points = List.copyOf(points);
        fault(pack, points).ifPresent(refused -> {
            throw new BadFigure(refused.found(), refused.remedy());
        });
    }

    /** A checked curve, or what is wrong with it. */
    public static Reckoning<EnduranceCurve> of(String pack, List<Point> points, Scale scale, boolean toReserve) {
        return fault(pack, points)
                .<Reckoning<EnduranceCurve>>map(refused -> refused)
                .orElseGet(() -> Reckoning.of(new EnduranceCurve(pack, points, scale, toReserve)));
    }

    private static Optional<Refused<EnduranceCurve>> fault(String pack, List<Point> points) {
        if (points.size() < 2) {
            return refuse(
                    Soundness.OUTSIDE_TABLE,
                    "The curve of " + pack + " has " + points.size() + " points and needs two or more.",
                    "Measure at another filter resistance.");
        }
        for (int i = 0; i < points.size(); i++) {
            Point point = points.get(i);
            Point before = points.get(Math.max(0, i - 1));
            if (!Double.isFinite(point.at()) || !Double.isFinite(point.hours()) || point.hours() < 0) {
                return refuse(
                        Soundness.INVALID_VALUE,
                        "The curve of " + pack + " has a point that is not a number: " + point.at() + ", "
                                + point.hours() + " h.",
                        "Give every number.");
            }
            if (i > 0 && before.at() >= point.at()) {
                return refuse(
                        Soundness.NOT_MONOTONE,
                        "The points of " + pack + " must rise: " + before.at() + " before " + point.at() + ".",
                        "Sort the points.");
            }
            if (before.hours() < point.hours()) {
                return refuse(
                        Soundness.NOT_MONOTONE,
                        "A more clogged filter cannot run longer: " + before.hours() + " h before " + point.hours()
                                + " h of " + pack + ".",
                        "Check the hours.");
            }
        }
        return Optional.empty();
    }

    private static Optional<Refused<EnduranceCurve>> refuse(Soundness reason, String found, String remedy) {
        return Optional.of(new Refused<>(reason, found, remedy, Optional.empty()));
    }

    /**
     * Hours at a filter resistance; straight line between the neighbours, with the worse neighbour as low and the better as high end.
     *
     * <p>Any curve that never rises lies between its neighbours, so the range holds whatever its shape. Never beyond the
     * table.
     */
    public Reckoning<Span> hours(double at) {
        for (int i = 0; i < points.size(); i++) {
            Point here = points.get(i);
            if (here.at() == at) {
                return Reckoning.of(Span.exactly(here.hours()));
            }
            if (i > 0 && points.get(i - 1).at() < at && at < here.at()) {
                Point before = points.get(i - 1);
                double part = (at - before.at()) / (here.at() - before.at());
                double line = before.hours() + (here.hours() - before.hours()) * part;
                return Reckoning.of(
                        new Span(here.hours(), Math.max(here.hours(), Math.min(before.hours(), line)), before.hours()));
            }
        }
        return Reckoning.refuse(
                Soundness.OUTSIDE_TABLE,
                "A filter at " + scale.words(WrittenNumbers.plain(at)) + " is outside the curve of " + pack + ", "
                        + WrittenNumbers.plain(points.get(0).at())
                        + " to "
                        + WrittenNumbers.plain(points.get(points.size() - 1).at())
                        + ".",
                "Measure again, or replace the filter.");
    }

    /**
     * Minutes to the reserve for a pack that is not new, full and warm.
     *
     * @param charge state of charge, 0 to 1
     * @param share of the rated energy that age and cold leave
     * @param rules of the pack
     */
    public Reckoning<RunTime> runTime(double at, double charge, Span share, PackRules rules) {
        Reckoning<Span> hours = hours(at);
        if (hours instanceof Refused<Span> refused) {
            return refused.as();
        }
        if (!(charge > rules.reserve() && charge <= 1)) {
            return Reckoning.refuse(
                    Soundness.BELOW_RESERVE,
                    "A charge of " + charge + " is not between the reserve of " + rules.reserve() + " and full.",
                    "Fit a charged pack.");
        }
        double above = (charge - rules.reserve()) / (toReserve ? 1 - rules.reserve() : 1);
        Span minutes = hours.value().orElseThrow().times(share).map(each -> each * 60 * above);
        return Reckoning.of(new RunTime(minutes, RunTime.End.RESERVE, RunTime.Basis.OWN_CURVE));
    }
}
