package org.fumewarden.codes;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.fumewarden.model.Act;
import org.fumewarden.model.Agent;
import org.fumewarden.model.AssignedFactor;
import org.fumewarden.model.Averaging;
import org.fumewarden.model.Band;
import org.fumewarden.model.Benchmark;
import org.fumewarden.model.BreathingRate;
import org.fumewarden.model.Citation;
import org.fumewarden.model.ClauseFor;
import org.fumewarden.model.CountedAs;
import org.fumewarden.model.DangerLevel;
import org.fumewarden.model.DeviceClass;
import org.fumewarden.model.Emitter;
import org.fumewarden.model.EyeShade;
import org.fumewarden.model.FilterMatch;
import org.fumewarden.model.Lever;
import org.fumewarden.model.Limit;
import org.fumewarden.model.Member;
import org.fumewarden.model.NoneListed;
import org.fumewarden.model.PublishedExposure;
import org.fumewarden.model.PublishedHigh;
import org.fumewarden.model.QuantityRange;
import org.fumewarden.model.Row;
import org.fumewarden.model.RowRef;
import org.fumewarden.model.Term;
import org.fumewarden.model.Threshold;

/** The kinds of table, and how a row of each becomes facts. */
enum RowKind {
    ACTS("acts", RowKind::act),
    AGENTS("agents", RowKind::agent),
    FACTORS("factors", RowKind::factor),
    BANDS("bands", RowKind::band),
    BENCHMARKS("benchmarks", RowKind::benchmark),
    CLAUSES("clauses", RowKind::clause),
    DANGER_LEVELS("danger-levels", RowKind::danger),
    EQUIPMENT("equipment", RowKind::equipment),
    DUTIES("duties", DutyReader::read),
    EMITTERS("emitters", RowKind::emitter),
    FILTERS("filters", RowKind::filter),
    LEVERS("levers", RowKind::lever),
    LIMITS("limits", RowKind::limit),
    MEMBERS("members", RowKind::members),
    PUBLISHED_EXPOSURES("published-exposures", RowKind::published),
    PUBLISHED_HIGHS("published-highs", RowKind::publishedHigh),
    NONE_LISTED("none-listed", RowKind::noneListed),
    RANGES("ranges", RowKind::range),
    SHADES("shades", RowKind::shade),
    TERMS("terms", RowKind::term),
    THRESHOLDS("thresholds", RowKind::threshold),
    WORK_RATES("work-rates", RowKind::workRate);

    private final String key;
    private final Function<RowReader, List<Row>> reader;

    RowKind(String key, Function<RowReader, List<Row>> reader) {
        this.key = key;
        this.reader = reader;
    }

    static Optional<RowKind> named(String key) {
        return Arrays.stream(values()).filter(k -> k.key.equals(key)).findFirst();
    }

    static List<String> names() {
        return Arrays.stream(values()).map(k -> k.key).toList();
    }

    List<Row> read(RowReader row) {
        return reader.apply(row);
    }

    private static List<Row> act(RowReader row) {
        String id = row.text("id");
        return List.of(
                new Act(row.ref(id), id, row.text("part"), row.words("for"), row.words("unless"), row.text("says")));
    }

    private static List<Row> agent(RowReader row) {
        String id = row.text("id");
        return List.of(new Agent(
                row.ref(id),
                id,
                row.text("name"),
                row.text("form"),
                row.text("cas", "none"),
                row.optionalNumber("molar-mass"),
                row.text("peaks", Agent.USUAL_PEAK)));
    }

    private static List<Row> factor(RowReader row) {
        String device = row.text("class");
        String against = row.text("against");
        String provided = row.text("provided", "always");
        String key = device + "/" + against + (provided.equals("always") ? "" : "/" + provided);
        return List.of(new AssignedFactor(row.ref(key, "factor"), device, against, row.amount("factor"), provided));
    }

    private static List<Row> band(RowReader row) {
        String band = row.text("band");
        String upTo = row.text("up-to");
        return List.of(new Band(
                row.ref(band + "/" + upTo), band, row.number("over"), row.number("up-to"), row.number("value")));
    }

    private static List<Row> benchmark(RowReader row) {
        String reason = row.text("reason");
        return limit(row).stream()
                .map(l -> (Limit) l)
                .map(l -> (Row) new Benchmark(
                        l.ref(),
                        l.agent(),
                        l.averaging(),
                        l.value(),
                        l.unit(),
                        l.fraction(),
                        l.ref().citation().isOfOrganisation()
                                        && !row.isChanged(l.ref().key(), "reason")
                                ? Citation.REASON
                                : reason))
                .toList();
    }

    private static List<Row> clause(RowReader row) {
        String rule = row.text("rule");
        return List.of(new ClauseFor(row.ref(rule), rule));
    }

    private static List<Row> danger(RowReader row) {
        String agent = row.text("agent");
        return List.of(new DangerLevel(
                row.ref(agent, "value"),
                agent,
                row.amount("value"),
                row.unit("unit"),
                new CountedAs(row.text("basis", CountedAs.LISTED))));
    }

    private static List<Row> equipment(RowReader row) {
        String id = row.text("id");
        return List.of(new DeviceClass(
                row.ref(id),
                id,
                row.text("name"),
                row.text("family"),
                row.text("seal"),
                row.text("supply"),
                row.text("pressure"),
                row.text("covers"),
                row.text("particle"),
                row.text("gas"),
                row.text("escape", "none"),
                row.number("order").intValue()));
    }

    private static List<Row> emitter(RowReader row) {
        String question = row.text("of");
        String value = row.text("is");
        String with = row.text("with", "any-process");
        List<Row> rows = new ArrayList<>();
        for (String rank : List.of("principal", "minor")) {
            for (String agent : row.words(rank)) {
                rows.add(new Emitter(row.ref(value + "/" + with + "/" + agent), question, value, with, agent, rank));
            }
        }
        return rows;
    }

    private static List<Row> filter(RowReader row) {
        String agent = row.text("agent");
        String system = row.text("system");
        return List.of(new FilterMatch(
                row.ref(agent + "/" + system), agent, system, row.text("type"), row.optionalNumber("highest")));
    }

    private static List<Row> lever(RowReader row) {
        String id = row.text("id");
        return List.of(new Lever(
                row.ref(id), id, row.text("path"), row.text("value"), row.text("says"), row.text("unless", "")));
    }

    private static List<Row> limit(RowReader row) {
        String agent = row.text("agent");
        String fraction = row.text("fraction", CountedAs.LISTED);
        List<Row> rows = new ArrayList<>();
        for (Averaging averaging : Averaging.values()) {
            if (row.has(averaging.key())) {
                rows.add(new Limit(
                        row.ref(agent + "/" + averaging.key(), averaging.key()),
                        agent,
                        averaging,
                        row.amount(averaging.key()),
                        row.unit("unit"),
                        fraction,
                        row.optionalNumber(averaging.key() + "-mg")));
            }
        }
        row.text("unit");
        return rows;
    }

    private static List<Row> members(RowReader row) {
        String set = row.text("set");
        return row.words("items").stream()
                .map(item -> (Row) new Member(row.ref(set + "/" + item), set, item))
                .toList();
    }

    private static List<Row> published(RowReader row) {
        String id = row.text("id");
        return List.of(new PublishedExposure(
                row.ref(id),
                id,
                row.text("study"),
                row.text("process"),
                row.text("metal"),
                row.text("place"),
                row.text("extraction"),
                row.text("agent"),
                row.text("consumable", "none"),
                row.amount("centre"),
                row.amount("deviation"),
                row.unit("unit"),
                row.text("sampler")));
    }

    private static List<Row> publishedHigh(RowReader row) {
        String agent = row.text("agent");
        String process = row.text("process");
        String metal = row.text("metal", "any");
        List<String> places = row.words("places");
        String key = process + "/" + metal + "/" + String.join("+", places) + "/" + agent;
        return List.of(
                new PublishedHigh(row.ref(key), agent, process, metal, places, row.amount("high"), row.unit("unit")));
    }

    private static List<Row> noneListed(RowReader row) {
        String list = row.text("list");
        String searched = row.text("searched");
        return row.words("agents").stream()
                .map(agent -> (Row) new NoneListed(row.ref(list + "/" + agent), list, agent, searched))
                .toList();
    }

    private static List<Row> range(RowReader row) {
        String quantity = row.text("quantity");
        String of = row.text("of");
        String with = row.text("with", "any");
        String key = quantity + "/" + of + (with.equals("any") ? "" : "/" + with);
        return List.of(new QuantityRange(
                row.ref(key), quantity, of, with, row.amount("low"), row.amount("high"), row.measure("unit")));
    }

    private static List<Row> shade(RowReader row) {
        String process = row.text("process");
        String by = row.text("by");
        BigDecimal from = row.number("at-least");
        RowRef ref = row.ref(process + "/" + by + "/" + from.toPlainString());
        return List.of(new EyeShade(ref, row.table(), process, by, from, row.number("at-most"), row.number("shade")));
    }

    private static List<Row> term(RowReader row) {
        String id = row.text("id");
        String catalogue = row.text("catalogue");
        return List.of(new Term(row.ref(id), catalogue, id, row.text("name"), row.words("only")));
    }

    private static List<Row> threshold(RowReader row) {
        String id = row.text("id");
        return List.of(new Threshold(row.ref(id), id, row.number("value"), row.measure("unit")));
    }

    /** The metabolic rate, the oxygen and the longest time are for the plan of a shift: no rule reads them. */
    private static List<Row> workRate(RowReader row) {
        String id = row.text("id");
        List<Row> rows = new ArrayList<>(FigureKinds.read("work-rates", row));
        BigDecimal mean = row.amount("minute-volume");
        BigDecimal peak = row.atLeast("peak", mean, "minute-volume");
        rows.add(new BreathingRate(row.ref(id), id, mean, peak, row.atLeast("peak-speech", peak, "peak")));
        return rows;
    }
}
