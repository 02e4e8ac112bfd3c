package org.fumewarden.task;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.fumewarden.codes.Located;
import org.fumewarden.codes.Nearest;
import org.fumewarden.model.Averaging;
import org.fumewarden.model.Exposure;
import org.fumewarden.model.Input;
import org.fumewarden.model.Judged;
import org.fumewarden.model.Unknown;

/** Reads the list of exposures of a task file. */
final class ExposureReader {
    private static final Set<String> CELLS = Set.of(
            "agent",
            "twa",
            "stel",
            "ceiling",
            "samples",
            "averaging",
            "non-detects",
            "statistic",
            "periods",
            "unsampled",
            "error",
            "estimate",
            "estimated",
            "judged",
            "because",
            "by",
            "basis",
            "on");
    /** Cells that mean nothing without another one. */
    private static final Map<String, String> BELONGS =
            Map.of("averaging", "samples", "non-detects", "samples", "statistic", "samples", "unsampled", "periods");

    private final Set<String> agents;
    private final Set<String> bases;
    private final LocalDate day;
    private final List<Input> inputs = new ArrayList<>();
    private final List<Reading> readings = new ArrayList<>();

    /**
     * A reader of one list.
     *
     * @param bases the words that a judgement may rest on
     * @param day the day of the task, after which nothing was judged
     */
    ExposureReader(Set<String> agents, Set<String> bases, LocalDate day) {
        this.agents = agents;
        this.bases = bases;
        this.day = day;
    }

    /** The exposures whose level stands in the file. */
    List<Input> inputs() {
        return inputs;
    }

    /** The exposures whose level is still to be reckoned. */
    List<Reading> readings() {
        return readings;
    }

    void read(Located list) {
        Set<String> seen = new HashSet<>();
        for (Located item : list.items()) {
            Map<String, Located> cells = item.entries(CELLS);
            Located agent = cells.get("agent");
            if (agent == null) {
                item.complain(
                        "does not say which agent it is.", "add agent: with a name such as manganese-respirable.");
                continue;
            }
            String id = agent.text();
            if (!agents.contains(id)) {
                agent.complain(
                        "names an agent that is not in the tables: \"" + Located.shown(id) + "\".",
                        Nearest.maybe(id, agents));
            } else if (!seen.add(id)) {
                agent.complain("is listed twice.", "put both values into one entry.");
            } else {
                entry(id, item, cells);
            }
        }
    }

    private void entry(String agent, Located item, Map<String, Located> cells) {
        boolean estimated = Optional.ofNullable(cells.get("estimated"))
                .flatMap(p -> p.oneOf(Set.of("true", "false")))
                .filter("true"::equals)
                .isPresent();
        int before = inputs.size() + readings.size();
        for (Averaging averaging : Averaging.values()) {
            Located place = cells.get(averaging.key());
            if (place != null && place.text().equals("unknown")) {
                inputs.add(new Unknown("exposures." + agent + "." + averaging.key(), place.path()));
            } else if (place != null) {
                Quantities.level(place)
                        .ifPresent(l -> inputs.add(new Exposure(
                                agent,
                                averaging,
                                l.value(),
                                l.unit(),
                                estimated ? "estimated value" : "value as given",
                                estimated,
                                place.path())));
            }
        }
        reckoned(agent, cells);
        judged(agent, cells, inputs.size() + readings.size() > before);
        BELONGS.forEach((cell, other) -> {
            if (cells.containsKey(cell) && !cells.containsKey(other)) {
                cells.get(cell).complain("stands without " + other + ".", "add " + other + ":, or drop it.");
            }
        });
        if (cells.containsKey("error") && !cells.containsKey("samples") && !cells.containsKey("periods")) {
            cells.get("error").complain("stands without samples or periods.", "add the results it belongs to.");
        }
        if (inputs.size() + readings.size() == before && item.problems().isEmpty()) {
            item.complain("gives no level.", "add twa: \"0.12 mg/m3\", samples, a judgement, or twa: unknown.");
        }
    }

    /** Levels that have to be reckoned first: at most one for each averaging time. */
    private void reckoned(String agent, Map<String, Located> cells) {
        List<Reading> found = new ArrayList<>();
        if (cells.containsKey("samples")) {
            Averaging averaging = Optional.ofNullable(cells.get("averaging"))
                    .flatMap(ExposureReader::averaging)
                    .orElse(Averaging.TWA);
            SampleReader.samples(agent, averaging, cells).ifPresent(found::add);
        }
        if (cells.containsKey("periods")) {
            SampleReader.periods(agent, cells).ifPresent(found::add);
        }
        Optional.ofNullable(cells.get("estimate")).ifPresent(place -> place.oneOf(Set.of("room-model"))
                .ifPresent(model -> found.add(new Reading.RoomModel(agent, place.path()))));
        Set<Averaging> taken = EnumSet.noneOf(Averaging.class);
        for (Reading reading : found) {
            Averaging averaging = reading.averaging();
            Located place = cells.get(reading.path().substring(reading.path().lastIndexOf('.') + 1));
            if (cells.containsKey(averaging.key())) {
                place.complain("stand beside a single " + averaging.key() + " value.", "keep one of the two.");
            } else if (!taken.add(averaging)) {
                place.complain("is a second source for the same " + averaging.words() + ".", "keep one of the two.");
            } else {
                readings.add(reading);
            }
        }
    }

    private static Optional<Averaging> averaging(Located place) {
        return switch (place.text()) {
            case "PT8H" -> Optional.of(Averaging.TWA);
            case "PT15M" -> Optional.of(Averaging.STEL);
            case "ceiling" -> Optional.of(Averaging.CEILING);
            default -> {
                place.complain(
                        "cannot be \"" + Located.shown(place.text()) + "\".",
                        "PT8H for a shift average, PT15M for 15 minutes, or ceiling.");
                yield Optional.empty();
            }
        };
    }

    /** A judgement counts with a person, a basis and a date; without one of them the level is as unknown as before. */
    private void judged(String agent, Map<String, Located> cells, boolean stated) {
        Located place = cells.get("judged");
        if (place == null) {
            return;
        }
        place.oneOf(Set.of("below-limit"));
        Optional<String> by = said(cells.get("by"));
        Optional<String> basis = said(cells.get("basis"))
                .filter(b -> cells.get("basis").oneOf(bases).isPresent());
        Optional<LocalDate> on =
                said(cells.get("on")).flatMap(d -> cells.get("on").day());
        if (on.isPresent() && on.get().isAfter(day)) {
            cells.get("on")
                    .complain(
                            "is after the day of the task, " + day + ".",
                            "give the day on which the judgement was made.");
        }
        if (by.isPresent() && basis.isPresent() && on.isPresent()) {
            String because = said(cells.get("because")).orElse(basis.get());
            inputs.add(
                    new Judged(agent, because, by.get(), basis.get(), on.get().toString(), place.path()));
        } else if (!stated) {
            inputs.add(new Unknown("exposures." + agent + ".judged", place.path()));
        }
    }

    private static Optional<String> said(Located cell) {
        return Optional.ofNullable(cell)
                .map(c -> Located.shown(c.text()))
                .filter(t -> !t.isBlank() && !t.equals("unknown"));
    }
}
