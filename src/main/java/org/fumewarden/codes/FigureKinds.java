package org.fumewarden.codes;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.fumewarden.model.Figure;
import org.fumewarden.model.Row;

/** Kinds of table whose rows are read by arithmetic or by people and by no rule, with the cells of each. */
final class FigureKinds {
    /** Units that tables of figures, thresholds and ranges use. */
    static final Set<String> UNITS = Set.of(
            "%",
            "1/h",
            "1/s",
            "C",
            "K",
            "K/m",
            "L/min",
            "L/mol",
            "Pa",
            "W",
            "as published",
            "cal/mol/K",
            "d",
            "cm3/g",
            "cycles",
            "exercises",
            "factor",
            "ft/min",
            "ft3/min",
            "g/kg",
            "h",
            "m",
            "m3",
            "m3/min",
            "mg/m3",
            "mg/s",
            "min",
            "min cm3/mol",
            "mm",
            "mmHg",
            "month",
            "ppm",
            "ratio",
            "s/cm",
            "share",
            "times",
            "times the limit");

    /**
     * The cells of one kind.
     *
     * @param key cells that tell a row from others
     * @param numbers cells that must hold a number
     * @param maybeNumbers cells that may hold one
     * @param words cells that must hold words
     * @param maybeWords cells that may
     */
    private record Cells(
            List<String> key,
            List<String> numbers,
            List<String> maybeNumbers,
            List<String> words,
            List<String> maybeWords) {}

    private static final Cells VALUES =
            new Cells(List.of("id"), List.of("value"), List.of(), List.of("id"), List.of("unit"));
    private static final Cells TESTS = new Cells(
            List.of("mark", "gas"),
            List.of("ppm", "breakthrough-ppm", "minutes", "flow", "humidity", "temperature"),
            List.of("molar-mass", "milligrams-per-litre"),
            List.of("mark", "gas"),
            List.of("agent"));
    private static final String SETS = "duty-vocabulary";
    private static final Map<String, Cells> KINDS = Map.ofEntries(
            Map.entry(
                    "adsorbed-vapours",
                    new Cells(
                            List.of("id"),
                            List.of("molar-mass", "density", "refractive-index", "boiling-point", "a", "b", "c"),
                            List.of("at-22", "polarizability"),
                            List.of("id", "cas"),
                            List.of("model-holds"))),
            Map.entry("adsorption-model", VALUES),
            Map.entry(
                    "blower-model",
                    new Cells(
                            List.of("id"),
                            List.of("low", "likely", "high"),
                            List.of(),
                            List.of("id"),
                            List.of("unit"))),
            Map.entry("cartridge-tests", TESTS),
            Map.entry(
                    "filter-use-times",
                    new Cells(List.of("id"), List.of(), List.of("minutes", "months"), List.of("id"), List.of())),
            Map.entry(
                    "gas-filter-classes",
                    new Cells(
                            List.of("type", "class"),
                            List.of("class", "ppm"),
                            List.of(),
                            List.of("type"),
                            List.of("colour"))),
            Map.entry("gas-filter-tests", TESTS),
            Map.entry(
                    "low-boiler-times",
                    new Cells(
                            List.of("group", "ppm"),
                            List.of("group", "ppm", "minutes"),
                            List.of(),
                            List.of(),
                            List.of())),
            Map.entry("pack-behaviour", VALUES),
            Map.entry(
                    "pack-cold",
                    new Cells(
                            List.of("temperature"),
                            List.of("temperature", "low", "likely", "high"),
                            List.of(),
                            List.of(),
                            List.of())),
            Map.entry("service-life-rules", VALUES),
            Map.entry(
                    "work-rates",
                    new Cells(
                            List.of("id"),
                            List.of("metabolic-rate", "oxygen", "minute-volume", "peak", "peak-speech"),
                            List.of("at-most-minutes"),
                            List.of("id"),
                            List.of())));

    private FigureKinds() {}

    static boolean contains(String kind) {
        return kind.equals(SETS) || KINDS.containsKey(kind);
    }

    static Set<String> names() {
        return KINDS.keySet();
    }

    /** The rows of one line. */
    static List<Row> read(String kind, RowReader row) {
        if (kind.equals(SETS)) {
            String set = row.text("set");
            return row.words("items").stream()
                    .map(item -> (Row) new Figure(
                            row.ref(set + "/" + item),
                            kind,
                            Map.of("set", set, "item", item),
                            row.file() + ":" + row.line()))
                    .toList();
        }
        Cells cells = KINDS.get(kind);
        cells.words().forEach(row::text);
        cells.numbers().forEach(row::figure);
        cells.maybeNumbers().forEach(row::optionalNumber);
        for (String cell : cells.maybeWords()) {
            if (cell.equals("unit") && row.has(cell)) {
                row.measure(cell);
            } else {
                row.text(cell, "");
            }
        }
        Map<String, String> asked = row.asked();
        String key = cells.key().stream()
                .map(cell -> Optional.ofNullable(asked.get(cell)).orElse("?"))
                .collect(Collectors.joining("/"));
        return List.of(new Figure(row.ref(key), kind, asked, row.file() + ":" + row.line()));
    }
}
