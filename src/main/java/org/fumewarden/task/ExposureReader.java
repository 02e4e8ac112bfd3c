package org.fumewarden.task;

import java.math.BigDecimal;
import java.math.MathContext;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.fumewarden.codes.Fault;
import org.fumewarden.codes.Located;
import org.fumewarden.codes.Nearest;
import org.fumewarden.codes.Vocabulary;
import org.fumewarden.model.Averaging;
import org.fumewarden.model.Exposure;
import org.fumewarden.model.Input;
import org.fumewarden.model.Judged;
import org.fumewarden.model.SampleNote;
import org.fumewarden.model.Unit;
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
            "on",
            "limit-twa",
            "limit-stel",
            "limit-ceiling",
            "limit-from",
            "limit-none");
    /** Cells that mean nothing without another one. */
    private static final Map<String, String> BELONGS =
            Map.of("averaging", "samples", "non-detects", "samples", "statistic", "samples", "unsampled", "periods");

    private final Vocabulary vocabulary;
    private final Set<String> agents;
    private final Set<String> particles;
    private final Set<String> bases;
    private final Set<String> bounds;
    private final LocalDate day;
    private final BigDecimal shifts;
    private final List<Input> inputs = new ArrayList<>();
    private final List<Reading> readings = new ArrayList<>();

    /**
     * A reader of one list.
     *
     * @param vocabulary knows the agents, and which of them are dust or fume
     * @param day the day of the task, after which nothing was judged
     * @param shifts the shift in parts of 8 h, at least 1
     */
    ExposureReader(Vocabulary vocabulary, LocalDate day, BigDecimal shifts) {
        this.vocabulary = vocabulary;
        this.shifts = shifts;
        this.agents = vocabulary.agents();
        this.particles = vocabulary.particles();
        this.bases = vocabulary.catalogue("judgement-bases");
        this.bounds = vocabulary.catalogue("judgement-bounds");
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
            String id = named(agent.text());
            if (!agents.contains(id)) {
                List<String> meant = vocabulary.agentsMeant(id);
                agent.complain(
                        meant.isEmpty() ? Fault.AGENT : Fault.MEANINGS,
                        meant.isEmpty()
                                ? "names an agent that is not in the tables: \"" + Located.shown(id) + "\"."
                                : "has more than one meaning: \"" + Located.shown(id) + "\".",
                        meant.isEmpty() ? Nearest.substance(id, agents) : Nearest.oneOf(meant),
                        meant.isEmpty() ? Nearest.slips(id, agents) : meant);
            } else if (!seen.add(id)) {
                agent.complain(Fault.TWICE, "is listed twice.", "put both values into one entry.");
            } else {
                entry(id, item, cells);
            }
        }
    }

    /** The id of an agent that goes by another word. */
    private String named(String word) {
        List<String> meant = agents.contains(word) ? List.of() : vocabulary.agentsMeant(word);
        return meant.size() == 1 ? meant.get(0) : word;
    }

    /** Whatever is called unknown counts as left out; an agent that is named, and nothing more, is unknown. */
    private void entry(String agent, Located item, Map<String, Located> all) {
        Map<String, Located> cells = vocabulary.told(all);
        boolean estimated = Optional.ofNullable(cells.get("estimated"))
                .flatMap(p -> p.oneOf(Set.of("true", "false")))
                .filter("true"::equals)
                .isPresent();
        int before = inputs.size() + readings.size();
        for (Averaging averaging : Averaging.values()) {
            Optional.ofNullable(cells.get(averaging.key())).ifPresent(p -> stated(agent, averaging, p, estimated));
        }
        highestBelowAverage(agent, cells);
        reckoned(agent, cells);
        judged(agent, cells);
        if (inputs.size() + readings.size() == before) {
            inputs.add(new Unknown(
                    "exposures." + agent + "." + Averaging.TWA.key(),
                    all.get("agent").path()));
        }
        BELONGS.forEach((cell, other) -> {
            if (cells.containsKey(cell) && !cells.containsKey(other)) {
                cells.get(cell).complain("stands without " + other + ".", "add " + other + ":, or drop it.");
            }
        });
        if (cells.containsKey("error") && !cells.containsKey("samples") && !cells.containsKey("periods")) {
            cells.get("error").complain("stands without samples or periods.", "add the results it belongs to.");
        }
        inputs.addAll(StatedLimits.of(agent, item, cells, (l, place) -> possible(agent, l.unit(), place)));
        StatedLimits.none(agent, cells, day).ifPresent(inputs::add);
    }

    /** Parts of a million parts of air count molecules of a gas; of dust they say nothing. */
    private boolean possible(String agent, Unit unit, Located place) {
        if (unit == Unit.PPM && particles.contains(agent)) {
            place.complain(
                    Fault.GAS,
                    "is in parts of gas, and this agent is dust or fume: \"" + Located.shown(place.text()) + "\".",
                    "give the mass that the laboratory found, in mg/m3 or ug/m3.");
            return false;
        }
        return true;
    }

    /** The highest moment of a shift is never below an average, and its highest 15 minutes are never below the whole. */
    private void highestBelowAverage(String agent, Map<String, Located> cells) {
        List<Exposure> own = inputs.stream()
                .filter(Exposure.class::isInstance)
                .map(Exposure.class::cast)
                .filter(e -> e.agent().equals(agent) && !e.statistic().equals(Exposure.NOT_DETECTED))
                .toList();
        for (Exposure high : own) {
            own.stream()
                    .filter(e -> e.unit() == high.unit())
                    .filter(e -> e.averaging().compareTo(high.averaging()) < 0)
                    .filter(e -> spread(e, high).compareTo(high.level()) > 0)
                    .findFirst()
                    .ifPresent(e -> cells.get(high.averaging().key())
                            .complain(
                                    Fault.PEAK,
                                    "is lower than the " + e.averaging().words()
                                            + " of the same agent. A highest value cannot be lower than an average.",
                                    "check whether the two values were swapped."));
        }
    }

    /** An average over 8 h of a longer shift may lie above what any 15 minutes of it held. */
    private BigDecimal spread(Exposure average, Exposure high) {
        return average.averaging() == Averaging.TWA && high.averaging() == Averaging.STEL
                ? average.level().divide(shifts, MathContext.DECIMAL64)
                : average.level();
    }

    /** Levels that have to be reckoned first: at most one for each averaging time. */
    private void reckoned(String agent, Map<String, Located> cells) {
        List<Reading> found = new ArrayList<>();
        if (cells.containsKey("samples")) {
            Averaging averaging = Optional.ofNullable(cells.get("averaging"))
                    .flatMap(ExposureReader::averaging)
                    .orElse(Averaging.TWA);
            SampleReader.samples(agent, averaging, cells)
                    .filter(r -> !(r instanceof Reading.Samples s) || possible(agent, s.unit(), cells.get("samples")))
                    .ifPresent(found::add);
        }
        if (cells.containsKey("periods")) {
            SampleReader.periods(agent, cells)
                    .filter(r -> !(r instanceof Reading.Shift s) || possible(agent, s.unit(), cells.get("periods")))
                    .ifPresent(found::add);
        }
        Optional.ofNullable(cells.get("estimate")).ifPresent(place -> place.oneOf(Set.of("room-model"))
                .ifPresent(model -> found.add(new Reading.RoomModel(agent, place.path()))));
        Set<Averaging> taken = EnumSet.noneOf(Averaging.class);
        for (Reading reading : found) {
            Averaging averaging = reading.averaging();
            Located place = cells.get(reading.path().substring(reading.path().lastIndexOf('.') + 1));
            if (cells.containsKey(averaging.key())) {
                place.complain(
                        Fault.TWICE, "stand beside a single " + averaging.key() + " value.", "keep one of the two.");
            } else if (!taken.add(averaging)) {
                place.complain(
                        Fault.TWICE,
                        "is a second source for the same " + averaging.words() + ".",
                        "keep one of the two.");
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
                        Fault.CHOICE,
                        "cannot be \"" + Located.shown(place.text()) + "\".",
                        "write PT8H for a shift average, PT15M for 15 minutes, or ceiling.");
                yield Optional.empty();
            }
        };
    }

    /** A level as it stands in the file; one below its detection limit counts at that limit. */
    private void stated(String agent, Averaging averaging, Located place, boolean estimated) {
        boolean below = place.text().startsWith("<");
        String text = below ? place.text().substring(1).strip() : place.text();
        Quantities.level(place, text)
                .filter(l -> possible(agent, l.unit(), place))
                .filter(l -> Quantities.found(place, text, l))
                .ifPresent(l -> {
                    String statistic =
                            estimated ? "estimated value" : below ? Exposure.NOT_DETECTED : Exposure.AS_GIVEN;
                    inputs.add(new Exposure(agent, averaging, l.value(), l.unit(), statistic, estimated, place.path()));
                    if (below) {
                        inputs.add(new SampleNote(
                                agent, "none-detected", "The result lies below its detection limit.", place.path()));
                    }
                });
    }

    /** A judgement counts with a person, a basis and a date; without one of them the level is as unknown as before. */
    private void judged(String agent, Map<String, Located> cells) {
        Located place = cells.get("judged");
        if (place == null) {
            return;
        }
        Optional<String> bound = place.oneOf(bounds);
        Optional<String> by = said(cells.get("by"));
        Optional<String> basis = said(cells.get("basis"))
                .filter(b -> cells.get("basis").oneOf(bases).isPresent());
        Optional<LocalDate> on =
                said(cells.get("on")).flatMap(d -> cells.get("on").day());
        if (on.isPresent() && on.get().isAfter(day) && !day.equals(LocalDate.EPOCH)) {
            cells.get("on")
                    .complain(
                            Fault.AFTER,
                            "is after the day of the task, " + day + ".",
                            "give the day on which the judgement was made.");
        }
        if (bound.isPresent() && by.isPresent() && basis.isPresent() && on.isPresent()) {
            String because = said(cells.get("because")).orElse(basis.get());
            int age = (int) ChronoUnit.DAYS.between(on.get(), day);
            inputs.add(new Judged(
                    agent, bound.get(), because, by.get(), basis.get(), on.get().toString(), age, place.path()));
        }
    }

    static Optional<String> said(Located cell) {
        return Optional.ofNullable(cell).map(c -> Located.shown(c.text())).filter(t -> !t.isBlank());
    }
}
