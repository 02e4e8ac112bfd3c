package org.fumewarden.codes;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.apache.commons.lang3.StringUtils;
import org.fumewarden.model.Figure;
import org.fumewarden.model.Row;

/** Kinds of table whose rows are read by arithmetic or by people and by no rule, with the cells of each. */
final class FigureKinds {
    /** Units that tables of figures, thresholds and ranges use. */
    static final Set<String> UNITS = Set.of("""
            %; 1/h; 1/s; A; C; K; K/m; L/min; L/mol; Pa; W; W/m2; as published; cal/mol/K; d; cm3/g; cm3/mol; cycles; exercises;
            factor; ft/min; ft3/min; g/cm3; g/kg; g/mol; h; m; m3; m3/min; mg/m3; mg/s; min; min cm3/mol; mm; mmHg; month; ppm;
            months; ratio; years; s/cm; shade number; share; times; times the limit
            """.strip().split(";\\s"));

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
            List<String> maybeWords) {
        static Cells of(String[] kind) {
            List<List<String>> cells = Arrays.stream(kind)
                    .map(all -> List.of(StringUtils.split(all)))
                    .toList();
            return new Cells(cells.get(1), cells.get(2), cells.get(3), cells.get(4), cells.get(5));
        }
    }

    /** What the head of a table says whose rows have a unit each. */
    private static final String IN_ROWS = "as named in each row";

    private static final String SETS = "duty-vocabulary";

    /** Kind, then its cells in the order of {@link Cells}. */
    private static final Map<String, Cells> KINDS = """
            adsorbed-vapours | id | molar-mass density refractive-index boiling-point a b c | at-22 polarizability | id cas | model-holds
            adsorption-model | id | value | | id | unit
            blower-model | id | low likely high | | id | unit
            cartridge-tests | mark gas | ppm breakthrough-ppm minutes flow humidity temperature | molar-mass milligrams-per-litre | mark gas | agent
            filter-use-times | id | | minutes months | id |
            gas-filter-classes | type class | class ppm | | type | colour
            gas-filter-tests | mark gas | ppm breakthrough-ppm minutes flow humidity temperature | molar-mass milligrams-per-litre | mark gas | agent
            low-boiler-times | group ppm | group ppm minutes | | |
            pack-behaviour | id | value | | id | unit
            pack-cold | temperature | temperature low likely high | | |
            service-life-rules | id | value | | id | unit
            work-rates | id | metabolic-rate oxygen minute-volume peak peak-speech | at-most-minutes | id |
            """.lines()
            .map(line -> line.split("\\|", -1))
            .collect(Collectors.toMap(kind -> kind[0].strip(), kind -> Cells.of(kind)));

    private FigureKinds() {}

    /** Complains about a unit in the head of a table that is none, and about rows without one where the head refers to them. */
    static void units(Map<String, Located> head, List<Located> rows) {
        Located unit = head.get("unit");
        if (unit == null) {
            return;
        }
        if (unit.text().equals(IN_ROWS)) {
            rows.stream()
                    .filter(row -> row.isMap() && !row.entries().containsKey("unit"))
                    .forEach(row -> row.complain("lacks \"unit\".", "add unit: with the unit of its figure."));
            return;
        }
        for (String one : unit.text().split(", | or ")) {
            if (!UNITS.contains(one)) {
                unit.complain(
                        "is no unit used here: \"" + Located.shown(one) + "\".",
                        Nearest.remedy(one, UNITS) + " Or \"" + IN_ROWS + "\".");
            }
        }
    }

    static boolean contains(String kind) {
        return kind.equals(SETS) || KINDS.containsKey(kind);
    }

    static Set<String> names() {
        Set<String> names = new TreeSet<>(KINDS.keySet());
        names.add(SETS);
        return names;
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
