package org.fumewarden.task;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.fumewarden.codes.Fault;
import org.fumewarden.codes.Located;
import org.fumewarden.exposure.NonDetects;
import org.fumewarden.exposure.Period;
import org.fumewarden.exposure.Sample;
import org.fumewarden.exposure.Statistic;
import org.fumewarden.exposure.TimeWeightedAverage.Unsampled;
import org.fumewarden.model.Averaging;
import org.fumewarden.model.Unit;

/** Reads samples and sampled stretches of a shift, with a complaint for each that cannot be. */
final class SampleReader {
    private static final double MINUTES_OF_A_DAY = 24 * 60;

    private static final Set<String> SAMPLE = Set.of("level", "duration", "worker");
    private static final BigDecimal WHOLE = BigDecimal.valueOf(100);
    private static final Set<String> PERIOD = Set.of("level", "duration");

    private SampleReader() {}

    private record Found(Quantities.Level level, Sample sample) {}

    /** The samples of an entry; empty, with complaints, when they are no set. */
    static Optional<Reading> samples(String agent, Averaging averaging, Map<String, Located> cells) {
        Located place = cells.get("samples");
        int before = place.problems().size();
        List<Found> found = new ArrayList<>();
        for (Located item : place.items()) {
            sample(item).ifPresent(found::add);
        }
        Optional<NonDetects> nonDetects = Choices.read(cells.get("non-detects"), NonDetects.values());
        Optional<Statistic> desired = Choices.read(cells.get("statistic"), Statistic.values());
        OptionalDouble error = error(cells.get("error"));
        if (place.problems().size() > before) {
            return Optional.empty();
        }
        if (found.isEmpty()) {
            place.complain(Fault.MISSING, "is an empty list.", "list the samples, or write twa: unknown.");
            return Optional.empty();
        }
        return unit(place, found.stream().map(Found::level).toList())
                .map(unit -> new Reading.Samples(
                        agent,
                        averaging,
                        unit,
                        found.stream().map(Found::sample).toList(),
                        found.stream()
                                .map(f -> f.level().value())
                                .reduce(BigDecimal::max)
                                .orElseThrow(),
                        nonDetects.orElse(NonDetects.MAXIMUM_LIKELIHOOD),
                        desired,
                        error,
                        place.path()));
    }

    private static Optional<Found> sample(Located item) {
        if (!item.isMap()) {
            return result(item);
        }
        Map<String, Located> cells = item.entries(SAMPLE);
        Located level = cells.get("level");
        if (level == null) {
            item.complain(Fault.LEVEL_NONE, "gives no level.", "{level: 0.004 mg/m3, duration: 4 h, worker: A}.");
            return Optional.empty();
        }
        OptionalDouble minutes = minutes(cells.get("duration"));
        Optional<String> worker =
                Optional.ofNullable(cells.get("worker")).map(Located::text).map(Located::shown);
        return result(level)
                .map(f -> new Found(
                        f.level(),
                        new Sample(f.sample().concentration(), f.sample().detected(), minutes, worker)));
    }

    /** One result; a {@code <} in front makes it a detection limit. */
    private static Optional<Found> result(Located place) {
        String text = place.text();
        boolean below = text.startsWith("<");
        Optional<Quantities.Level> level =
                Quantities.level(place, below ? text.substring(1).strip() : text);
        return level.filter(l -> Quantities.found(place, text, l))
                .map(l -> new Found(
                        l,
                        below
                                ? Sample.below(l.value().doubleValue())
                                : Sample.found(l.value().doubleValue())));
    }

    private static OptionalDouble minutes(Located place) {
        if (place == null) {
            return OptionalDouble.empty();
        }
        Optional<BigDecimal> minutes = Quantities.amount(place, "duration");
        if (minutes.isPresent() && !Quantities.positive(minutes.get())) {
            place.complain(Fault.TIME, "is no time.", "\"4 h\", \"45 min\", or leave the time out.");
            return OptionalDouble.empty();
        }
        return minutes.stream().mapToDouble(BigDecimal::doubleValue).findFirst();
    }

    /** Sampling and analytical error as a share. */
    private static OptionalDouble error(Located place) {
        if (place == null) {
            return OptionalDouble.empty();
        }
        Optional<BigDecimal> percent = Quantities.amount(place, "percent");
        if (percent.isPresent() && percent.get().compareTo(WHOLE) >= 0) {
            place.complain(
                    "is as large as the result itself: \"" + Located.shown(place.text()) + "\".",
                    "the error that the laboratory states, below 100 %.");
        }
        return percent.stream()
                .mapToDouble(p -> p.doubleValue() / WHOLE.doubleValue())
                .findFirst();
    }

    private static Optional<Unit> unit(Located place, List<Quantities.Level> levels) {
        List<Unit> units =
                levels.stream().map(Quantities.Level::unit).distinct().toList();
        if (units.size() > 1) {
            place.complain(Fault.MIXED, "mix units.", "give all samples in one unit.");
        }
        return units.size() == 1 ? Optional.of(units.get(0)) : Optional.empty();
    }

    /** The sampled stretches of a shift; empty, with complaints, when they are none. */
    static Optional<Reading> periods(String agent, Map<String, Located> cells) {
        Located place = cells.get("periods");
        int before = place.problems().size();
        List<Quantities.Level> levels = new ArrayList<>();
        List<Period> periods = new ArrayList<>();
        for (Located item : place.items()) {
            Map<String, Located> parts = item.entries(PERIOD);
            if (!parts.keySet().containsAll(PERIOD)) {
                item.complain(
                        Fault.LEVEL_NONE, "lacks its level or its duration.", "{level: 0.2 mg/m3, duration: 2 h}.");
                continue;
            }
            OptionalDouble minutes = minutes(parts.get("duration"));
            Optional<Quantities.Level> level = Quantities.level(parts.get("level"));
            if (level.isPresent() && minutes.isPresent()) {
                levels.add(level.get());
                periods.add(new Period(level.get().value().doubleValue(), minutes.getAsDouble()));
            }
        }
        Unsampled rest =
                Choices.read(cells.get("unsampled"), Unsampled.values()).orElse(Unsampled.AS_HIGHEST);
        OptionalDouble error = error(cells.get("error"));
        if (place.problems().size() > before) {
            return Optional.empty();
        }
        if (periods.isEmpty()) {
            place.complain(Fault.MISSING, "is an empty list.", "[{level: 0.2 mg/m3, duration: 2 h}].");
            return Optional.empty();
        }
        if (levels.stream().noneMatch(l -> Quantities.positive(l.value()))) {
            place.complain(
                    Fault.ZERO,
                    "hold no result above zero.",
                    "nothing was found: give the detection limit that the laboratory states as the level.");
            return Optional.empty();
        }
        double all = periods.stream().mapToDouble(Period::minutes).sum();
        if (all > MINUTES_OF_A_DAY) {
            place.complain(
                    "has periods that last " + Math.round(all)
                            + " minutes in all, more than the 1440 minutes of a day.",
                    "give one shift; put another day into a file of its own.");
            return Optional.empty();
        }
        return unit(place, levels).map(unit -> new Reading.Shift(agent, unit, periods, rest, error, place.path()));
    }
}
