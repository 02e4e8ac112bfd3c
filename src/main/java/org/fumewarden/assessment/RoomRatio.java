package org.fumewarden.assessment;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.fumewarden.exposure.Spread;
import org.fumewarden.exposure.TimeWeightedAverage;
import org.fumewarden.exposure.TwoZoneRoom;
import org.fumewarden.model.Figures;
import org.fumewarden.model.QuantityRange;

/**
 * By what room, arc time, wire and extraction of a task move a published level; each step says so.
 *
 * <p>A line that is not answered moves nothing, or, where the worst is asked for, as far as its worst answer would.
 */
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
    private final boolean worst;
    private final List<String> open = new ArrayList<>();
    private boolean beyond;

    RoomRatio(Answers answers, PublishedLevels published, List<String> steps, List<String> lacks, boolean worst) {
        this.answers = answers;
        this.published = published;
        this.steps = steps;
        this.lacks = lacks;
        this.worst = worst;
    }

    /** Whether the room is worse than any that was studied, so that its ratio was cut. */
    boolean beyond() {
        return beyond;
    }

    /** The lines whose worst answer was taken. */
    List<String> open() {
        return open;
    }

    Spread all(String place, String process) {
        return room(place).times(arc(process)).times(use(process)).times(extraction());
    }

    /** The room of the task over the usual one of such a place, by the air at the arc. */
    private Spread room(String place) {
        if (place.equals("outdoors")) {
            double ratio = published.figure("outdoors-over-indoors");
            told("Outdoors over indoors: times " + Figures.shown(ratio) + ".");
            return Spread.exactly(ratio);
        }
        OptionalDouble volume = answers.amount("room-volume");
        OptionalDouble changes = answers.amount("air-changes");
        Optional<String> movement = answers.word("air-movement");
        double highest = published.figure("highest-room-ratio");
        OptionalDouble minutes = answers.amount("time-on-task");
        if (worst && (volume.isEmpty() || changes.isEmpty() || minutes.isEmpty())) {
            beyond = true;
            String what = volume.isEmpty() ? "room size" : changes.isEmpty() ? "air changes" : "time on the task";
            lacking(what, "the worst room counts", highest);
            return Spread.exactly(highest);
        }
        if (volume.isEmpty() && changes.isEmpty() && movement.isEmpty()) {
            return Spread.exactly(1);
        }
        double here = overUsual(place, volume, changes, movement, minutes.orElse(TimeWeightedAverage.EIGHT_HOURS));
        if (!lacks.isEmpty()) {
            return Spread.exactly(1);
        }
        beyond = here > highest;
        double ratio = Math.min(highest, Math.max(here, published.figure("least-room-ratio")));
        if (worst && movement.isEmpty()) {
            lacking("air movement at the arc", "the smoke is taken to hang at the arc", ratio);
        }
        told("This room over the usual one: times " + Figures.shown(ratio)
                + (beyond ? ", the most that studies of enclosed places show" : "") + ".");
        return Spread.exactly(ratio);
    }

    private double overUsual(
            String place, OptionalDouble volume, OptionalDouble changes, Optional<String> movement, double minutes) {
        double usualVolume = middle("volume", place);
        double usualChanges = middle("air-changes", place);
        double here = near(
                volume.orElse(usualVolume),
                changes.orElse(usualChanges),
                middle("exchange", movement.orElse(worst ? "smoke-hangs" : "unknown")),
                minutes);
        return here / near(usualVolume, usualChanges, middle("exchange", "unknown"), minutes);
    }

    private void told(String step) {
        if (!worst) {
            steps.add(step);
        }
    }

    private void lacking(String what, String taken, double ratio) {
        open.add(what);
        steps.add(what + " is not stated: " + taken + ", times " + Figures.shown(ratio) + ".");
    }

    /** The average at the arc over the task, for one unit of fume per minute. */
    private double near(double volume, double changes, double exchange, double minutes) {
        double radius = middle("near-radius", ANY);
        double near = TwoZoneRoom.halfSphere(radius);
        if (!(volume > near) || !(changes >= 0)) {
            lacks.add("A room of " + Figures.shown(volume) + " m3 with " + Figures.shown(changes)
                    + " air changes an hour is not possible. Correct estimate.room-volume or estimate.air-changes.");
            return 1;
        }
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
        double usual = Math.exp(PublishedLevels.middle(published.arc(process)));
        if (given.isEmpty() && worst) {
            lacking("arc time", "the arc is taken to burn all the time", 1 / usual);
        }
        if (given.isEmpty()) {
            return Spread.exactly(worst ? 1 / usual : 1);
        }
        if (given.getAsDouble() <= 0) {
            lacks.add("The arc burns for 0 % of the time. Leave estimate.arc-time out.");
            return Spread.exactly(1);
        }
        double ratio = given.getAsDouble() / PERCENT / usual;
        told("Arc time over the usual one: times " + Figures.shown(ratio) + ".");
        return Spread.exactly(ratio);
    }

    /** The fume of the wire that melts here over the usual rate of the process. */
    private Spread use(String process) {
        OptionalDouble rate = answers.amount("consumable-rate");
        Optional<QuantityRange> usual = published.range("fume-rate", process, ANY);
        if (rate.isEmpty()) {
            return Spread.exactly(worst ? usual.map(this::most).orElse(1.0) : 1);
        }
        Optional<QuantityRange> content = answers.word("consumable").flatMap(c -> published
                .range("fume-per-consumable", c, answers.word("process").orElse(process))
                .or(() -> published.range("fume-per-consumable", c, process)));
        if (content.isEmpty() || usual.isEmpty()) {
            lacks.add("The use of consumable is given, but no fume of it is held. Answer estimate.consumable, or leave"
                    + " estimate.consumable-rate out.");
            return Spread.exactly(1);
        }
        double here = content.get().high().doubleValue() * rate.getAsDouble() * MILLIGRAMS / MINUTES / SECONDS;
        double ratio = here / Math.exp(PublishedLevels.middle(usual.get()));
        told("Wire or electrode melted here over the usual fume rate: times " + Figures.shown(ratio) + ".");
        return Spread.exactly(ratio);
    }

    /** By how much the highest fume rate that is held of a process is above its usual one. */
    private double most(QuantityRange usual) {
        double ratio = usual.high().doubleValue() / Math.exp(PublishedLevels.middle(usual));
        lacking("wire or electrode melted in an hour", "the highest fume rate held of the process counts", ratio);
        return ratio;
    }

    private Spread extraction() {
        return answers.word("extraction")
                .flatMap(word -> published.range("extraction-left", word, ANY))
                .map(r -> {
                    Spread left = Spread.between(r.low().doubleValue(), r.high().doubleValue());
                    told("Extraction leaves " + r.low().toPlainString() + " to "
                            + r.high().toPlainString() + " in field studies: times " + Figures.shown(left.median())
                            + ".");
                    return left;
                })
                .orElse(Spread.exactly(1));
    }
}
