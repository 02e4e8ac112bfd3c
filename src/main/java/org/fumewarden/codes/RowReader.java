package org.fumewarden.codes;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.fumewarden.model.Citation;
import org.fumewarden.model.Confidence;
import org.fumewarden.model.RowRef;
import org.fumewarden.model.Unit;

/** Reads the cells of one table row and complains about those that are missing or that nobody reads. */
final class RowReader {
    /** Cells that a row of any kind may have. */
    private static final Set<String> COMMON =
            Set.of("note", "from", "until", "clause", "confidence", "source", "also", "edition", "affirmed");

    private final Located place;
    private final Map<String, Located> cells;
    private final String table;
    private final Citation whole;
    private final List<Affirmation> affirmations;
    private final Set<String> used = new HashSet<>();

    RowReader(Located place, String table, Citation whole) {
        this.place = place;
        this.cells = place.entries();
        this.table = table;
        this.whole = whole;
        this.affirmations = affirmed();
    }

    /** Id of the table that the row stands in. */
    String table() {
        return table;
    }

    /** A cell that must be there. */
    String text(String cell) {
        used.add(cell);
        Located found = cells.get(cell);
        if (found == null) {
            place.complain("lacks \"" + cell + "\".", "add " + cell + ": ...");
            return "?";
        }
        String text = found.text();
        return text.isEmpty() ? "?" : text;
    }

    /** A cell that may be left out. */
    String text(String cell, String otherwise) {
        return cells.containsKey(cell) ? text(cell) : otherwise;
    }

    /** A number that must be there; 1 stands in for it after a complaint. */
    BigDecimal number(String cell) {
        used.add(cell);
        Located found = cells.get(cell);
        if (found == null) {
            place.complain("lacks \"" + cell + "\".", "add " + cell + ": with a number.");
            return BigDecimal.ONE;
        }
        return found.decimal().orElse(BigDecimal.ONE);
    }

    /** A number above zero that must be there; of several that documents give the lowest, which protects most. */
    BigDecimal amount(String cell) {
        Located found = cells.get(cell);
        if (found != null && found.isList()) {
            used.add(cell);
            return candidates(cell).stream().findFirst().orElseGet(() -> {
                found.complain("must hold the values that documents give.", "write them as [0.005, 0.01].");
                return BigDecimal.ONE;
            });
        }
        BigDecimal number = number(cell);
        if (number.signum() <= 0) {
            cells.get(cell)
                    .complain("must be above zero but is " + number + ".", "give the amount as the source prints it.");
            return BigDecimal.ONE;
        }
        return number;
    }

    private List<BigDecimal> candidates(String cell) {
        Located found = cells.get(cell);
        return found == null || !found.isList()
                ? List.of()
                : found.items().stream()
                        .flatMap(item -> item.decimal().stream())
                        .filter(number -> number.signum() > 0)
                        .sorted()
                        .toList();
    }

    /** True when the row has the cell. */
    boolean has(String cell) {
        return cells.containsKey(cell);
    }

    Optional<BigDecimal> optionalNumber(String cell) {
        used.add(cell);
        return Optional.ofNullable(cells.get(cell)).flatMap(Located::decimal);
    }

    List<String> words(String cell) {
        used.add(cell);
        return Optional.ofNullable(cells.get(cell)).map(Located::words).orElse(List.of());
    }

    List<Located> items(String cell) {
        used.add(cell);
        return Optional.ofNullable(cells.get(cell)).map(Located::items).orElse(List.of());
    }

    Unit unit(String cell) {
        String symbol = text(cell);
        for (Unit unit : Unit.values()) {
            if (unit.symbol().equals(symbol)) {
                return unit;
            }
        }
        place.complain("has the unit \"" + symbol + "\".", "mg/m3 or ppm.");
        return Unit.MG_M3;
    }

    Optional<LocalDate> from() {
        return Optional.ofNullable(cells.get("from")).flatMap(Located::day);
    }

    Optional<LocalDate> until() {
        return Optional.ofNullable(cells.get("until")).flatMap(Located::day);
    }

    /** The address and citation of this row: those of the table unless the row has its own clause, source, edition or confidence. */
    RowRef ref(String key) {
        return ref(key, "");
    }

    /** The same for a row whose value stands in a cell that may hold what several documents give. */
    RowRef ref(String key, String cell) {
        String clause = text("clause", whole.clause());
        Confidence confidence = Optional.ofNullable(cells.get("confidence"))
                .flatMap(TableReader::confidence)
                .orElse(whole.confidence());
        String source = text("source", whole.source());
        String edition = text("edition", whole.edition());
        Citation own = new Citation(source, clause, edition, confidence);
        List<Affirmation> checks =
                affirmations.stream().filter(a -> a.covers(key)).toList();
        List<String> beside =
                candidates(cell).stream().skip(1).map(BigDecimal::toPlainString).toList();
        return new RowRef(
                table, key, new Citation(source, clause, edition, Affirmation.confidence(own, checks)), beside);
    }

    /** Other documents that give the same. */
    List<String> also() {
        return words("also");
    }

    /** The checks of this row by reviewers, in the order in which they were written. */
    List<Affirmation> affirmations() {
        return affirmations;
    }

    private List<Affirmation> affirmed() {
        List<Affirmation> found = new ArrayList<>();
        for (Located item : items("affirmed")) {
            Map<String, Located> check = item.entries(Set.of("rows", "by", "on", "source"));
            List<String> keys =
                    Optional.ofNullable(check.get("rows")).map(Located::words).orElse(List.of());
            Optional<LocalDate> on = Optional.ofNullable(check.get("on")).flatMap(Located::day);
            String by = Optional.ofNullable(check.get("by")).map(Located::text).orElse("");
            String source =
                    Optional.ofNullable(check.get("source")).map(Located::text).orElse("");
            if (on.isPresent() && !by.isEmpty() && !source.isEmpty()) {
                found.add(new Affirmation(keys, by, on.get(), source));
            } else {
                item.complain("does not say who affirmed what.", "give by:, on: and source: of the check.");
            }
        }
        return List.copyOf(found);
    }

    /** Complains about checks of rows that this line does not hold. */
    void affirmedOf(List<String> keys) {
        for (Affirmation check : affirmations) {
            for (String key : check.keys()) {
                if (keys.stream().noneMatch(k -> k.equals(key) || k.startsWith(key + "/"))) {
                    place.complain(
                            "affirms the row \"" + Located.shown(key) + "\", which is not on this line.",
                            Nearest.maybe(key, keys));
                }
            }
        }
    }

    /** Complains about cells that no reader asked for. */
    void finish() {
        cells.forEach((name, cell) -> {
            if (!used.contains(name) && !COMMON.contains(name)) {
                used.addAll(COMMON);
                cell.complain("is not a cell of this kind of table.", Nearest.maybe(name, used));
            }
        });
    }
}
