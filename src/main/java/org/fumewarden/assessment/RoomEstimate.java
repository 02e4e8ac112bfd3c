package org.fumewarden.assessment;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.fumewarden.exposure.FumeSource;
import org.fumewarden.exposure.Screening;
import org.fumewarden.exposure.Spread;
import org.fumewarden.exposure.TimeWeightedAverage;
import org.fumewarden.exposure.Workplace;
import org.fumewarden.model.Answer;
import org.fumewarden.model.QuantityRange;
import org.fumewarden.task.Task;

/**
 * An exposure estimated from process, room and ventilation, for screening only.
 *
 * <p>Answers of the task replace the ranges of the tables. Where neither holds a figure there is no estimate.
 */
public final class RoomEstimate {
    private static final double MINUTES = 60;
    private static final double PERCENT = 100;
    private static final String ANY = "any";

    private final Task task;
    private final Figures figures;
    private final List<String> lacks = new ArrayList<>();

    private RoomEstimate(Task task, Figures figures) {
        this.task = task;
        this.figures = figures;
    }

    /**
     * What came of it.
     *
     * @param screening the distribution of the 8 hour average, empty when something is lacking
     * @param lacks why there is no estimate, one sentence each
     * @param usual what the trade usually finds in open shops, in words; empty when not held
     */
    public record Result(Optional<Screening> screening, List<String> lacks, String usual) {
        public Result {
            lacks = List.copyOf(lacks);
        }
    }

    /** Estimates the level of an agent at the arc. */
    public static Result of(Task task, Figures figures, String agent) {
        return new RoomEstimate(task, figures).estimate(agent);
    }

    private Result estimate(String agent) {
        Optional<String> process = needed("process", "task.process");
        Optional<String> place = place();
        OptionalDouble time = amount("time-on-task");
        double shift = amount("shift").orElse(TimeWeightedAverage.EIGHT_HOURS);
        double minutes = time.orElse(shift);
        if (minutes <= 0) {
            lacks.add("The task lasts no time. Maybe correct task.time-on-task.");
        }
        Optional<FumeSource> source = process.flatMap(p -> source(agent, p)).map(this::extracted);
        Optional<Workplace> room = place.flatMap(this::room);
        // Nobody said that the rest of the shift is clean, so it is counted like the task.
        Optional<Screening> screening = lacks.isEmpty() && source.isPresent() && room.isPresent()
                ? Optional.of(Screening.of(source.get(), room.get(), Workplace.Place.AT_THE_ARC, minutes)
                        .over(Math.max(minutes, shift), TimeWeightedAverage.EIGHT_HOURS, false))
                : Optional.empty();
        return new Result(screening, lacks, process.flatMap(this::usual).orElse(""));
    }

    private Optional<String> usual(String process) {
        return range("usual-level", process, ANY)
                .map(r -> "Fume in open shops is usually " + r.low().toPlainString() + " to "
                        + r.high().toPlainString() + " " + r.unit() + " with this process (from memory).");
    }

    private Optional<String> place() {
        Optional<String> place = needed("place", "task.place");
        if (place.filter("confined-space"::equals).isPresent()) {
            lacks.add("An estimate opens no confined space. Maybe measure before entry and during the work.");
        } else if (place.isPresent() && range("volume", place.get(), ANY).isEmpty()) {
            lacks.add("No room model is held for work " + place.get() + ". Maybe measure.");
        }
        return place;
    }

    private Optional<FumeSource> source(String agent, String process) {
        Optional<Spread> arc = arcShare(process);
        OptionalDouble use = amount("consumable-rate");
        Optional<String> consumable = answer("consumable");
        if (use.isPresent() && consumable.isEmpty()) {
            lacks.add("The use of consumable is given, but not which one. Maybe answer estimate.consumable.");
        }
        Optional<Spread> content = consumable.flatMap(c -> perConsumable(agent, c, process));
        if (arc.isEmpty() || !lacks.isEmpty()) {
            return Optional.empty();
        }
        if (use.isPresent() && content.isPresent()) {
            return Optional.of(FumeSource.ofConsumable(content.get(), Spread.exactly(use.getAsDouble()), arc.get()));
        }
        Optional<FumeSource> fume = rate(process).map(r -> FumeSource.ofRate(r, arc.get()));
        if (fume.isEmpty() || agent.equals("welding-fume")) {
            return fume;
        }
        Optional<Spread> whole = consumable.flatMap(c -> perConsumable("welding-fume", c, process));
        if (content.isEmpty() || whole.isEmpty()) {
            lacks.add("The share of " + agent + " in the fume is not known. Maybe answer estimate.consumable, or"
                    + " measure it.");
            return Optional.empty();
        }
        double share = content.get().median() / whole.get().median();
        return fume.map(f -> f.share(new Spread(share, content.get().deviationLog())));
    }

    private Optional<Spread> rate(String process) {
        Optional<Spread> rate = range("fume-rate", process, ANY).map(RoomEstimate::spread);
        if (rate.isEmpty()) {
            lacks.add("No estimate is offered for the process " + process
                    + ": no published fume rate is held. Maybe measure.");
        }
        return rate;
    }

    private Optional<Spread> arcShare(String process) {
        OptionalDouble given = amount("arc-time");
        if (given.isPresent() && given.getAsDouble() <= 0) {
            lacks.add("The arc burns for 0 % of the time. Maybe leave estimate.arc-time out.");
            return Optional.empty();
        }
        return given.isPresent()
                ? Optional.of(Spread.exactly(given.getAsDouble() / PERCENT))
                : range("arc-time", process, ANY)
                        .or(() -> range("arc-time", "any-other", ANY))
                        .map(RoomEstimate::spread);
    }

    /** Grams of the agent per kilogram of consumable, with the spread of a figure that its source gives alone. */
    private Optional<Spread> perConsumable(String agent, String consumable, String process) {
        String metal = agent.replaceFirst("-(inhalable|respirable)$", "");
        String quantity = agent.equals("welding-fume") ? "fume-per-consumable" : metal + "-per-consumable";
        Optional<Double> figure = range(quantity, consumable, process)
                .map(r -> r.high().doubleValue())
                .or(() -> metal.equals("chromium-vi") ? ofAllChromium(consumable, process) : Optional.empty());
        if (figure.isEmpty()) {
            lacks.add("No emission of " + agent + " is held for " + consumable + " with the process " + process
                    + ". Maybe another estimate.consumable was meant, or measure.");
        }
        return figure.flatMap(f -> range("factor-spread", ANY, ANY)
                .map(s -> Spread.between(f * s.low().doubleValue(), f * s.high().doubleValue())));
    }

    private Optional<Double> ofAllChromium(String consumable, String process) {
        return range("chromium-per-consumable", consumable, process)
                .flatMap(all -> range("chromium-vi-share-of-chromium", process, ANY)
                        .map(share -> all.high().multiply(share.high()).doubleValue()));
    }

    private FumeSource extracted(FumeSource source) {
        return answer("extraction")
                .flatMap(word -> range("capture", word, ANY))
                .map(r -> source.extracted(r.low().doubleValue(), r.high().doubleValue()))
                .orElse(source);
    }

    private Optional<Workplace> room(String place) {
        OptionalDouble volume = given("room-volume", "volume", place);
        Optional<Spread> changes =
                exactly("air-changes").or(() -> range("air-changes", place, ANY).map(RoomEstimate::spread));
        Optional<Spread> exchange =
                range("exchange", answer("air-movement").orElse("unknown"), ANY).map(RoomEstimate::spread);
        Optional<BigDecimal> radius = range("near-radius", ANY, ANY).map(QuantityRange::high);
        if (volume.isEmpty() || changes.isEmpty() || exchange.isEmpty() || radius.isEmpty()) {
            return Optional.empty();
        }
        try {
            return Optional.of(new Workplace(
                    changes.get().times(volume.getAsDouble() / MINUTES),
                    volume.getAsDouble(),
                    exchange.get(),
                    radius.get().doubleValue()));
        } catch (IllegalArgumentException e) {
            lacks.add(e.getMessage());
            return Optional.empty();
        }
    }

    private Optional<Spread> exactly(String question) {
        OptionalDouble given = amount(question);
        if (given.isPresent() && given.getAsDouble() <= 0) {
            lacks.add("The answer 0 to " + question + " makes no room. Maybe leave it out.");
            return Optional.empty();
        }
        return given.stream().mapToObj(Spread::exactly).findFirst();
    }

    private OptionalDouble given(String question, String quantity, String of) {
        OptionalDouble given = amount(question);
        return given.isPresent()
                ? given
                : range(quantity, of, ANY).stream()
                        .mapToDouble(r -> r.high().doubleValue())
                        .findFirst();
    }

    private static Spread spread(QuantityRange range) {
        return Spread.between(range.low().doubleValue(), range.high().doubleValue());
    }

    private Optional<QuantityRange> range(String quantity, String of, String with) {
        return figures.all(QuantityRange.class)
                .filter(r -> r.quantity().equals(quantity)
                        && r.of().equals(of)
                        && r.with().equals(with))
                .findFirst();
    }

    private Optional<String> needed(String question, String path) {
        Optional<String> found = answer(question);
        if (found.isEmpty()) {
            lacks.add("Without an answer to " + path + " there is no estimate. Maybe give it, or measure.");
        }
        return found;
    }

    private Optional<String> answer(String question) {
        return task.inputs().stream()
                .filter(i -> i instanceof Answer a && a.question().equals(question))
                .map(i -> ((Answer) i).value())
                .findFirst();
    }

    private OptionalDouble amount(String question) {
        return ShiftAssessment.amount(task, question);
    }
}
