package org.fumewarden.assessment;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.fumewarden.exposure.Spread;
import org.fumewarden.exposure.TimeWeightedAverage;
import org.fumewarden.exposure.TwoZoneRoom;
import org.fumewarden.model.Figures;
import org.fumewarden.model.QuantityRange;

/** By what room, arc time, wire and extraction of a task move a published level; each step says so. */
final class RoomRatio {
    private static final double MINUTES = 60;
    private static final double SECONDS = 60;
    private static final double PERCENT = 100;
    private static final double MILLIGRAMS = 1000;
    private static final String ANY = "any";

    private final Answers answers;
    private final PublishedLevels published;
    private final List<String> steps;
    private final List<String> lacks;
    private boolean beyond;

    RoomRatio(Answers answers, PublishedLevels published, List<String> steps, List<String> lacks) {
        this.answers = answers;
        this.published = published;
        this.steps = steps;
        this.lacks = lacks;
    }

    /** Whether the room is worse than any that was studied, so that its ratio was cut. */
    boolean beyond() {
        return beyond;
    }

    Spread all(String place, String process) {
        return room(place).times(arc(process)).times(use(process)).times(extraction());
    }

    /** The room of the task over the usual one of such a place, by the air at the arc. */
    private Spread room(String place) {
        if (place.equals("outdoors")) {
            double ratio = published.figure("outdoors-over-indoors");
            steps.add("Outdoors over indoors: times " + Figures.shown(ratio) + ".");
            return Spread.exactly(ratio);
        }
        OptionalDouble volume = answers.amount("room-volume");
        OptionalDouble changes = answers.amount("air-changes");
        Optional<String> movement = answers.word("air-movement").filter(m -> !m.equals("unknown"));
        if (volume.isEmpty() && changes.isEmpty() && movement.isEmpty()) {
            return Spread.exactly(1);
        }
        double usualVolume = middle("volume", place);
        double usualChanges = middle("air-changes", place);
        double usual = near(usualVolume, usualChanges, middle("exchange", "unknown"));
        double here = near(
                volume.orElse(usualVolume),
                changes.orElse(usualChanges),
                middle("exchange", movement.orElse("unknown")));
        if (!lacks.isEmpty()) {
            return Spread.exactly(1);
        }
        double highest = published.figure("highest-room-ratio");
        beyond = here / usual > highest;
        double ratio = Math.min(highest, Math.max(here / usual, published.figure("least-room-ratio")));
        steps.add("This room over the usual one: times " + Figures.shown(ratio)
                + (beyond ? ", the most that studies of enclosed places show" : "") + ".");
        return Spread.exactly(ratio);
    }

    /** The average at the arc over the task, for one unit of fume per minute. */
    private double near(double volume, double changes, double exchange) {
        double radius = middle("near-radius", ANY);
        double near = TwoZoneRoom.halfSphere(radius);
        if (!(volume > near) || !(changes >= 0)) {
            lacks.add("A room of " + Figures.shown(volume) + " m3 with " + Figures.shown(changes)
                    + " air changes an hour is not possible. Correct estimate.room-volume or estimate.air-changes.");
            return 1;
        }
        double minutes = answers.amount("time-on-task").orElse(TimeWeightedAverage.EIGHT_HOURS);
        return new TwoZoneRoom(1, changes * volume / MINUTES, exchange, near, volume - near)
                .average(Math.max(minutes, 1), TwoZoneRoom.Fields.CLEAN)
                .near();
    }

    private double middle(String quantity, String of) {
        return published
                .range(quantity, of, ANY)
                .map(PublishedLevels::middle)
                .map(Math::exp)
                .orElseThrow(() -> ExposureTables.absent(quantity + " of " + of));
    }

    Spread arc(String process) {
        OptionalDouble given = answers.amount("arc-time");
        if (given.isEmpty()) {
            return Spread.exactly(1);
        }
        if (given.getAsDouble() <= 0) {
            lacks.add("The arc burns for 0 % of the time. Leave estimate.arc-time out.");
            return Spread.exactly(1);
        }
        double ratio = given.getAsDouble() / PERCENT / Math.exp(PublishedLevels.middle(published.arc(process)));
        steps.add("Arc time over the usual one: times " + Figures.shown(ratio) + ".");
        return Spread.exactly(ratio);
    }

    /** The fume of the wire that melts here over the usual rate of the process. */
    private Spread use(String process) {
        OptionalDouble rate = answers.amount("consumable-rate");
        if (rate.isEmpty()) {
            return Spread.exactly(1);
        }
        Optional<QuantityRange> content = answers.word("consumable").flatMap(c -> published
                .range("fume-per-consumable", c, answers.word("process").orElse(process))
                .or(() -> published.range("fume-per-consumable", c, process)));
        Optional<QuantityRange> usual = published.range("fume-rate", process, ANY);
        if (content.isEmpty() || usual.isEmpty()) {
            lacks.add("The use of consumable is given, but no fume of it is held. Answer estimate.consumable, or leave"
                    + " estimate.consumable-rate out.");
            return Spread.exactly(1);
        }
        double here = content.get().high().doubleValue() * rate.getAsDouble() * MILLIGRAMS / MINUTES / SECONDS;
        double ratio = here / Math.exp(PublishedLevels.middle(usual.get()));
        steps.add("Wire or electrode melted here over the usual fume rate: times " + Figures.shown(ratio) + ".");
        return Spread.exactly(ratio);
    }

    private Spread extraction() {
        return answers.word("extraction")
                .flatMap(word -> published.range("extraction-left", word, ANY))
                .map(r -> {
                    Spread left = Spread.between(r.low().doubleValue(), r.high().doubleValue());
                    steps.add("Extraction leaves " + r.low().toPlainString() + " to "
                            + r.high().toPlainString() + " in field studies: times " + Figures.shown(left.median())
                            + ".");
                    return left;
                })
                .orElse(Spread.exactly(1));
    }
}
