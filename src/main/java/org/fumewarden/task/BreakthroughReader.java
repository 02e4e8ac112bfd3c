package org.fumewarden.task;

import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.fumewarden.codes.Fault;
import org.fumewarden.codes.Located;
import org.fumewarden.codes.Nearest;
import org.fumewarden.endurance.MeasuredBreakthrough;
import org.fumewarden.model.Unit;

/** Reads breakthrough times that a maker measured on the filter, one line for each agent. */
final class BreakthroughReader {
    static final String NAME = "breakthrough";
    static final String PATH = "kit." + NAME;
    private static final String DRIEST = "humidity-from";

    /** Cells that every line must have, in the order in which they are asked for. */
    static final List<String> NEEDED =
            List.of("agent", "concentration", "exit", "flow", "humidity", "temperature", "time", "document");

    private static final Set<String> CELLS =
            Stream.concat(NEEDED.stream(), Stream.of(DRIEST)).collect(Collectors.toUnmodifiableSet());
    private static final String EXAMPLE = "{agent: chlorine, concentration: 10 ppm, exit: 0.5 ppm, flow: 90 L/min,"
            + " humidity: 70 %, temperature: 20 C, time: 6 h, document: \"data sheet, line 3\"}.";

    private BreakthroughReader() {}

    static Map<String, MeasuredBreakthrough> read(Located list, Set<String> agents) {
        Map<String, MeasuredBreakthrough> found = new LinkedHashMap<>();
        for (Located item : list.items()) {
            Map<String, Located> cells = item.entries(CELLS);
            if (!cells.keySet().containsAll(NEEDED)) {
                item.complain("needs " + String.join(", ", NEEDED) + ".", EXAMPLE);
                continue;
            }
            Optional<String> agent = cells.get("agent").oneOf(agents, Nearest::substance);
            Optional<MeasuredBreakthrough> line = line(cells);
            if (agent.isPresent() && line.isPresent() && found.put(agent.get(), line.get()) != null) {
                cells.get("agent")
                        .complain(
                                "names \"" + agent.get() + "\" twice.",
                                "keep the line whose conditions are at least as hard as yours, and nearest to them.");
            }
        }
        return found;
    }

    private static Optional<MeasuredBreakthrough> line(Map<String, Located> cells) {
        Optional<Double> minutes = positive(cells.get("time"), "duration");
        Optional<Double> ppm = ppm(cells.get("concentration"));
        Optional<Double> exit = ppm(cells.get("exit"));
        Optional<Double> flow = positive(cells.get("flow"), "flow");
        Optional<Double> humid = amount(cells.get("humidity"), "percent");
        Optional<Double> driest = cells.containsKey(DRIEST) ? amount(cells.get(DRIEST), "percent") : humid;
        Optional<Double> warm = amount(cells.get("temperature"), "temperature");
        String document = Located.shown(cells.get("document").text());
        if (document.isBlank()) {
            cells.get("document").complain("is empty.", "name the manufacturer's document and its line.");
        }
        boolean whole = minutes.isPresent()
                && ppm.isPresent()
                && exit.isPresent()
                && flow.isPresent()
                && humid.isPresent()
                && driest.isPresent()
                && warm.isPresent();
        return whole
                ? Optional.of(new MeasuredBreakthrough(
                        minutes.get(),
                        ppm.get(),
                        exit.get(),
                        flow.get(),
                        driest.get(),
                        humid.get(),
                        warm.get(),
                        document))
                : Optional.empty();
    }

    private static Optional<Double> amount(Located place, String kind) {
        return Quantities.amount(place, kind).map(BigDecimal::doubleValue);
    }

    private static Optional<Double> positive(Located place, String kind) {
        Optional<Double> found = amount(place, kind);
        found.filter(value -> !(value > 0))
                .ifPresent(value -> place.complain(
                        Fault.AMOUNT, "must be above zero.", "give the figure of the manufacturer's document."));
        return found.filter(value -> value > 0);
    }

    private static Optional<Double> ppm(Located place) {
        Optional<Quantities.Level> level = Quantities.level(place);
        level.filter(found -> found.unit() != Unit.PPM || found.value().signum() <= 0)
                .ifPresent(found -> place.complain(
                        Fault.AMOUNT,
                        "must be in ppm and above zero but is \"" + Located.shown(place.text()) + "\".",
                        "convert the manufacturer's figure to ppm."));
        return level.filter(found -> found.unit() == Unit.PPM && found.value().signum() > 0)
                .map(found -> found.value().doubleValue());
    }
}
