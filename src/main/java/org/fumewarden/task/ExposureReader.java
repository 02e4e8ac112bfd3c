package org.fumewarden.task;

import java.util.ArrayList;
import java.util.Comparator;
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
    private static final Set<String> CELLS =
            Set.of("agent", "twa", "stel", "ceiling", "samples", "averaging", "estimated", "judged", "because");

    private final Set<String> agents;

    ExposureReader(Set<String> agents) {
        this.agents = agents;
    }

    List<Input> read(Located list) {
        List<Input> inputs = new ArrayList<>();
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
                entry(id, item, cells, inputs);
            }
        }
        return inputs;
    }

    private static void entry(String agent, Located item, Map<String, Located> cells, List<Input> inputs) {
        boolean estimated = Optional.ofNullable(cells.get("estimated"))
                .flatMap(p -> p.oneOf(Set.of("true", "false")))
                .filter("true"::equals)
                .isPresent();
        int before = inputs.size();
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
        samples(agent, cells, inputs);
        judged(agent, cells, inputs);
        if (inputs.size() == before && item.problems().isEmpty()) {
            item.complain("gives no level.", "add twa: \"0.12 mg/m3\", samples, judged: below-limit, or twa: unknown.");
        }
    }

    private static void samples(String agent, Map<String, Located> cells, List<Input> inputs) {
        Located place = cells.get("samples");
        if (place == null) {
            return;
        }
        Averaging averaging = Optional.ofNullable(cells.get("averaging"))
                .flatMap(ExposureReader::averaging)
                .orElse(Averaging.TWA);
        if (cells.containsKey(averaging.key())) {
            place.complain("stand beside a single " + averaging.key() + " value.", "keep one of the two.");
            return;
        }
        List<Quantities.Level> levels = place.items().stream()
                .map(Quantities::level)
                .flatMap(Optional::stream)
                .toList();
        if (levels.stream().map(Quantities.Level::unit).distinct().count() > 1) {
            place.complain("mix units.", "give all samples in one unit.");
            return;
        }
        levels.stream()
                .max(Comparator.comparing(Quantities.Level::value))
                .ifPresent(highest -> inputs.add(new Exposure(
                        agent,
                        averaging,
                        highest.value(),
                        highest.unit(),
                        "highest of " + levels.size() + " samples",
                        false,
                        place.path())));
        if (levels.isEmpty() && place.problems().isEmpty()) {
            place.complain("is an empty list.", "list the samples, or write twa: unknown.");
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

    private static void judged(String agent, Map<String, Located> cells, List<Input> inputs) {
        Located place = cells.get("judged");
        if (place == null) {
            return;
        }
        place.oneOf(Set.of("below-limit"));
        Located because = cells.get("because");
        if (because == null) {
            place.complain("gives no reason.", "add because: with what the judgement rests on.");
            return;
        }
        inputs.add(new Judged(agent, Located.shown(because.text()), place.path()));
    }
}
