package org.fumewarden.codes;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.commons.lang3.StringUtils;
import org.fumewarden.model.Row;

/** What people of an organisation compared with documents, kept in a file beside the rules, which an update leaves alone. */
public final class Affirmations {
    /** Name of the file, in the folder that holds the folder of rules. */
    public static final String FILE = "affirmations.yaml";

    private static final Set<String> CELLS = Set.of("row", "value", "by", "on", "document", "place");

    /** One entry and where it stands. */
    private record Entry(Affirmation says, Located place) {}

    private final List<Entry> entries;

    private Affirmations(List<Entry> entries) {
        this.entries = List.copyOf(entries);
    }

    /** No file, or none wanted. */
    static Affirmations none() {
        return new Affirmations(List.of());
    }

    /** Those beside a folder of rules; none when there is no such file. */
    static Affirmations beside(RuleFolder folder) {
        Optional<Located> file = folder.beside(FILE);
        if (file.isEmpty()) {
            return none();
        }
        List<Entry> entries = new ArrayList<>();
        Located root = file.get();
        Located list = root.entries(Set.of("affirmations")).get("affirmations");
        if (list != null) {
            list.items().forEach(item -> entries.add(new Entry(read(item), item)));
        }
        root.settle();
        return new Affirmations(entries);
    }

    private static Affirmation read(Located item) {
        Map<String, Located> cells = item.entries(CELLS);
        for (String cell : CELLS) {
            if (!cells.containsKey(cell)) {
                item.complain(
                        "lacks \"" + cell + "\".", "say row, value, by, on, document and place; rules --affirm does.");
            } else if (cells.get(cell).text().isBlank()) {
                cells.get(cell).complain("says nothing.", "write in words who compared what with which place.");
            }
        }
        return new Affirmation(
                text(cells, "row"),
                text(cells, "value"),
                text(cells, "by"),
                Optional.ofNullable(cells.get("on")).flatMap(Located::day).orElse(LocalDate.EPOCH),
                text(cells, "document"),
                text(cells, "place"));
    }

    private static String text(Map<String, Located> cells, String name) {
        return cells.containsKey(name) ? cells.get(name).text() : "?";
    }

    /** The row without the day on which it begins. */
    private static String address(Affirmation says) {
        return StringUtils.substringBefore(says.row(), RowAffirmer.FROM);
    }

    /** The checks of the value that a row has now. */
    List<Affirmation> of(Row row) {
        return entries.isEmpty()
                ? List.of()
                : entries.stream()
                        .map(Entry::says)
                        .filter(a -> address(a).equals(row.ref().address())
                                && a.value().equals(CellHash.of(row)))
                        .toList();
    }

    /** Who compared another value than a row of this edition has now; empty when nobody did, or somebody compared this one too. */
    List<String> voided(Row row, String edition) {
        return entries.isEmpty() || !of(row).isEmpty()
                ? List.of()
                : entries.stream()
                        .map(Entry::says)
                        .filter(a -> a.row().equals(row.ref().address() + edition))
                        .map(Affirmation::by)
                        .distinct()
                        .toList();
    }

    /**
     * The entries that no row answers: the value is another now, or the row is gone.
     *
     * @param whole every folder of the rule base: an entry may speak of a row that is not looked at now
     * @param looked the folders that are looked at; an entry of a table elsewhere is none of their business
     */
    public static List<Problem> voided(RuleFolder whole, RuleFolder looked) {
        List<Entry> entries = beside(whole).entries;
        if (entries.isEmpty()) {
            return List.of();
        }
        List<Row> all = rows(whole);
        Set<String> elsewhere = all.stream().map(r -> r.ref().table()).collect(Collectors.toCollection(TreeSet::new));
        rows(looked).forEach(r -> elsewhere.remove(r.ref().table()));
        List<Problem> problems = new ArrayList<>();
        for (Entry entry : entries) {
            Affirmation says = entry.says();
            if (elsewhere.contains(StringUtils.substringBefore(says.row(), "#"))) {
                continue;
            }
            List<Row> rows = all.stream()
                    .filter(r -> r.ref().address().equals(address(says)))
                    .toList();
            if (rows.stream().noneMatch(r -> CellHash.of(r).equals(says.value()))) {
                problems.add(new Problem(
                        entry.place().file(),
                        entry.place().line(),
                        says.row(),
                        rows.isEmpty()
                                ? "affirms a row that no table holds."
                                : "affirms another value than the row has now: it is void.",
                        rows.isEmpty()
                                ? Nearest.remedy(
                                        says.row(),
                                        all.stream()
                                                .map(r -> r.ref().address())
                                                .collect(TreeSet::new, Set::add, Set::addAll))
                                : "compare the value with its document again, then rules --affirm \"" + says.row()
                                        + "\"" + "; remove this entry."));
            }
        }
        return problems;
    }

    /** What beside a folder of rules is dated after today: nobody can have compared or typed a value then. */
    public static List<Problem> toCome(RuleFolder folder, LocalDate today) {
        Stream<Problem> affirmed = beside(folder).entries.stream()
                .filter(entry -> entry.says().on().isAfter(today))
                .map(entry -> new Problem(
                        entry.place().file(),
                        entry.place().line(),
                        entry.says().row(),
                        "was compared on a day to come: " + entry.says().on() + ".",
                        "give the day on which the row was compared; until then nothing of this file counts."));
        return Stream.concat(affirmed, TypedApart.beside(folder).toCome(today)).toList();
    }

    /**
     * Lets nothing be advised on them.
     *
     * @throws InputException when one is dated after today
     */
    public static void refuseToCome(RuleFolder folder, LocalDate today) {
        List<Problem> problems = toCome(folder, today);
        if (!problems.isEmpty()) {
            throw new InputException(problems);
        }
    }

    /** The rows of every table that can be read; what cannot is named elsewhere. */
    private static List<Row> rows(RuleFolder folder) {
        return folder.names("", ".yaml").stream()
                .filter(name -> name.contains("/tables/"))
                .flatMap(name -> new TableReader(name, folder.located(name)).read().rows().stream())
                .map(DatedRow::row)
                .toList();
    }
}
