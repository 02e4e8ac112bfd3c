package org.fumewarden.codes;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.fumewarden.model.Citation;
import org.fumewarden.model.Confidence;
import org.fumewarden.model.Keyed;
import org.fumewarden.model.RowRef;
import org.fumewarden.model.Unit;

/** Reads the cells of one table row and complains about those that are missing or that nobody reads. */
final class RowReader {
    /** Where the milder of several values stands. */
    private static final String BESIDE = "beside";

    /** Cells that a row of any kind may have. */
    private static final Set<String> COMMON =
            Set.of("note", "from", "until", "clause", "confidence", "source", "also", "edition", BESIDE);

    private final Located place;
    private final Map<String, Located> cells;
    private final String table;
    private final Citation whole;
    private final Function<String, Document> documents;
    private final Map<String, Compared> compared;
    private final Set<String> used = new HashSet<>();

    RowReader(Located place, String table, Citation whole, Function<String, Document> documents) {
        this(place, table, whole, documents, Map.of());
    }

    /** A reader of a row whose values somebody affirmed or edited, by the key of the row. */
    RowReader(
            Located place,
            String table,
            Citation whole,
            Function<String, Document> documents,
            Map<String, Compared> compared) {
        this.place = place;
        this.cells = place.entries();
        this.table = table;
        this.whole = whole;
        this.documents = documents;
        this.compared = compared;
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
        used.add(cell);
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
                found.complain("must give the values that documents give.", "write them as [0.005, 0.01].");
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
        used.add(cell);
        return cells.containsKey(cell);
    }

    Optional<BigDecimal> optionalNumber(String cell) {
        used.add(cell);
        return Optional.ofNullable(cells.get(cell)).flatMap(Located::decimal);
    }

    /** An amount that is not below that of another cell; complains about one that is. */
    BigDecimal atLeast(String cell, BigDecimal least, String other) {
        BigDecimal amount = amount(cell);
        if (cells.containsKey(cell) && amount.compareTo(least) < 0) {
            cells.get(cell)
                    .complain(
                            "is " + amount + ", below " + other + " (" + least + ").",
                            "give both as the source prints them.");
        }
        return amount;
    }

    /** A number that may be of any sign, as it is written. */
    void figure(String cell) {
        number(cell);
    }

    /** The cells that were asked for, in words. */
    Map<String, String> asked() {
        Map<String, String> asked = new TreeMap<>();
        used.forEach(cell -> Optional.ofNullable(cells.get(cell))
                .filter(Located::isScalar)
                .ifPresent(found -> asked.put(cell, found.text())));
        return asked;
    }

    String file() {
        return place.file();
    }

    int line() {
        return place.line();
    }

    /** The unit of a figure; complains about one that no table uses. */
    String measure(String cell) {
        String unit = text(cell);
        if (cells.containsKey(cell) && !FigureKinds.UNITS.contains(unit)) {
            cells.get(cell)
                    .complain(
                            "is no unit used here: \"" + Located.shown(unit) + "\".",
                            Nearest.remedy(unit, FigureKinds.UNITS));
        }
        return unit;
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
        cells.getOrDefault(cell, place)
                .complain("has the unit \"" + Located.shown(symbol) + "\".", "write mg/m3 or ppm.");
        return Unit.MG_M3;
    }

    /** One of the words for a kind of constant; the first stands in after a complaint. */
    <E extends Enum<E> & Keyed> E one(String cell, Class<E> type) {
        E first = type.getEnumConstants()[0];
        return text(cell).equals("?") ? first : constant(cells.get(cell), type).orElse(first);
    }

    /** Several of them. */
    <E extends Enum<E> & Keyed> List<E> some(String cell, Class<E> type) {
        used.add(cell);
        Located found = cells.get(cell);
        return found == null
                ? List.of()
                : found.items().stream()
                        .flatMap(item -> constant(item, type).stream())
                        .toList();
    }

    static <E extends Enum<E> & Keyed> Optional<E> constant(Located place, Class<E> type) {
        return place.oneOf(new LinkedHashSet<>(Keyed.keys(type))).flatMap(key -> Keyed.find(type, key));
    }

    /** Complains about what a cell says. */
    void refuse(String cell, String text, String remedy) {
        cells.get(cell).complain("cannot be \"" + Located.shown(text) + "\".", remedy);
    }

    Optional<LocalDate> from() {
        return Optional.ofNullable(cells.get("from")).flatMap(Located::day);
    }

    Optional<LocalDate> until() {
        return Optional.ofNullable(cells.get("until")).flatMap(Located::day);
    }

    /**
     * The address and citation of this row: those of the table unless the row has its own. A row of another document never takes
     * the clause of the table, which would be a false place, unless it is a copy; and its edition is that of its document.
     */
    RowRef ref(String key) {
        return ref(key, "");
    }

    /** The same for a row whose value stands in a cell that may hold what several documents give. */
    RowRef ref(String key, String cell) {
        Confidence confidence = Optional.ofNullable(cells.get("confidence"))
                .flatMap(TableReader::confidence)
                .orElse(whole.confidence());
        String source = text("source", whole.source());
        Document document = documents.apply(source);
        boolean elsewhere = !source.equals(whole.source()) && !document.copyOf().contains(whole.source());
        String clause = text("clause", elsewhere ? Citation.NO_PLACE : whole.clause());
        String edition = text("edition", elsewhere ? document.statedEdition() : whole.edition());
        Citation own = new Citation(source, clause, edition, confidence);
        Compared found = compared.getOrDefault(key, Compared.AS_WRITTEN).about(cell);
        String where = cells.containsKey(BESIDE) ? " (" + text(BESIDE) + ")" : "";
        List<String> beside = candidates(cell).stream()
                .skip(1)
                .map(number -> number.toPlainString() + where)
                .toList();
        if (key.isBlank()) {
            place.complain("has no word to be known by.", "name what the row is about.");
        }
        return new RowRef(
                table,
                key.isBlank() ? "?" : key,
                found.of(own, cell),
                beside,
                found.checks().stream().map(Affirmation::words).collect(Collectors.joining("; ")),
                found.changed());
    }

    /** True when somebody changed a cell in the line of a row. */
    boolean isChanged(String key, String cell) {
        return compared.getOrDefault(key, Compared.AS_WRITTEN).edited().cells().contains(cell);
    }

    /** Other documents that give the same. */
    List<String> also() {
        return words("also");
    }

    /** Complains about cells that no reader asked for. */
    void finish() {
        cells.forEach((name, cell) -> {
            if (!used.contains(name) && !COMMON.contains(name)) {
                used.addAll(COMMON);
                cell.complain("is not a cell of this kind of table.", Nearest.remedy(name, used));
            }
        });
    }
}
