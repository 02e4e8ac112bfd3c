package org.fumewarden.codes;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.fumewarden.model.Citation;
import org.fumewarden.model.Confidence;
import org.fumewarden.model.Row;

/** Reads one table file. */
final class TableReader {
    private static final Set<String> HEAD = Set.of(
            "id",
            "kind",
            "source",
            "clause",
            "edition",
            "unit",
            "confidence",
            "also",
            "checked-on",
            "from",
            "until",
            "successor",
            "note",
            "rows");
    private static final LocalDate ALWAYS = LocalDate.of(1900, 1, 1);
    private static final LocalDate NEVER = LocalDate.of(9999, 12, 31);

    private static final String QUESTIONS = "questions";

    private final Located root;
    private final String file;
    private final Affirmations affirmations;
    private final EditedRows edited;
    private final Function<String, Document> documents;

    TableReader(String file, Located root) {
        this(file, root, Affirmations.none(), new EditedRows(), Document::none);
    }

    /**
     * A reader of one table of somebody's rules.
     *
     * @param documents of the documents, by id; empty where none is known
     */
    TableReader(
            String file,
            Located root,
            Affirmations affirmations,
            EditedRows edited,
            Function<String, Document> documents) {
        this.documents = documents;
        this.edited = edited;
        this.affirmations = affirmations;
        this.file = file;
        this.root = root;
    }

    /** Reads the table; complaints gather in the located tree. */
    TableFile read() {
        Map<String, Located> head = root.entries(HEAD);
        String id = head(head, "id");
        String kind = head(head, "kind");
        Citation citation = new Citation(
                head(head, "source"),
                head(head, "clause"),
                head(head, "edition"),
                Optional.ofNullable(head.get("confidence"))
                        .flatMap(TableReader::confidence)
                        .orElse(Confidence.MEMORY));
        head(head, "confidence");
        LocalDate checked = day(head, "checked-on").orElse(ALWAYS);
        head(head, "checked-on");
        LocalDate from = day(head, "from").orElse(ALWAYS);
        LocalDate until = day(head, "until").orElse(NEVER);
        List<String> seconds =
                Optional.ofNullable(head.get("also")).map(Located::words).orElse(List.of());
        List<DatedRow> rows = new ArrayList<>();
        List<Question> questions = new ArrayList<>();
        List<Located> items =
                Optional.ofNullable(head.get("rows")).map(Located::items).orElse(List.of());
        FigureKinds.units(head, items);
        Optional<Function<RowReader, List<Row>>> parser = parser(kind);
        if (parser.isEmpty() && !kind.equals(QUESTIONS)) {
            root.complain("has the kind \"" + kind + "\".", Nearest.remedy(kind, kinds()));
        }
        for (Located item : items) {
            if (kind.equals(QUESTIONS)) {
                questions.add(question(item));
            } else {
                parser.ifPresent(reading -> rows.addAll(row(item, id, reading, citation, from, until, seconds)));
            }
        }
        return new TableFile(file, id, kind, citation, checked, List.copyOf(rows), List.copyOf(questions));
    }

    private static Optional<LocalDate> day(Map<String, Located> head, String name) {
        return Optional.ofNullable(head.get(name)).flatMap(Located::day);
    }

    private static Optional<Function<RowReader, List<Row>>> parser(String kind) {
        Optional<Function<RowReader, List<Row>>> facts = RowKind.named(kind).map(found -> found::read);
        return facts.isEmpty() && FigureKinds.contains(kind) ? Optional.of(row -> FigureKinds.read(kind, row)) : facts;
    }

    /** The kinds of table there are. */
    static Set<String> kinds() {
        Set<String> kinds = new TreeSet<>(RowKind.names());
        kinds.addAll(FigureKinds.names());
        kinds.add(QUESTIONS);
        return kinds;
    }

    /**
     * The rows of one line; it holds on the days of its table but for those that it names itself.
     *
     * @param seconds other documents in which the rows were seen that are known as well as their table
     */
    private List<DatedRow> row(
            Located item,
            String table,
            Function<RowReader, List<Row>> kind,
            Citation citation,
            LocalDate first,
            LocalDate end,
            List<String> seconds) {
        RowReader reader = new RowReader(item, table, citation, documents);
        List<Row> read = kind.apply(reader);
        LocalDate from = reader.from().orElse(first);
        LocalDate until = reader.until().orElse(end);
        if (!until.isAfter(from)) {
            item.complain("ends on or before the day it begins.", "until is the first day no longer in force.");
        }
        List<String> also = reader.has("confidence") || reader.has("also") ? reader.also() : seconds;
        reader.finish();
        Map<String, Compared> compared = compared(read, item, from);
        List<Row> known =
                compared.isEmpty() ? read : kind.apply(new RowReader(item, table, citation, documents, compared));
        return IntStream.range(0, known.size())
                .mapToObj(i -> new DatedRow(
                        known.get(i),
                        read.get(i).citation().source(),
                        from,
                        until,
                        item.line(),
                        also,
                        compared.getOrDefault(read.get(i).ref().key(), Compared.AS_WRITTEN)
                                .checks()))
                .toList();
    }

    /** By key, the rows that somebody affirmed or edited. */
    private Map<String, Compared> compared(List<Row> rows, Located item, LocalDate from) {
        String edition = from.equals(ALWAYS) ? "" : RowAffirmer.FROM + from;
        EditedRows.At differs = edited.at(root.file(), item.line());
        Map<String, Compared> compared = new HashMap<>();
        for (Row row : rows) {
            EditedRows.At own = edited.holds(root.file(), row, from) ? differs.withoutValues() : differs;
            Compared one = new Compared(affirmations.of(row), own, affirmations.voided(row, edition));
            if (!one.equals(Compared.AS_WRITTEN)) {
                compared.put(row.ref().key(), one);
            }
        }
        return compared;
    }

    private Question question(Located item) {
        RowReader reader =
                new RowReader(item, "questions", new Citation("questions", "-", "-", Confidence.READ), documents);
        String id = reader.text("id");
        Stream.of("from", "until")
                .filter(reader::has)
                .forEach(cell -> reader.refuse(cell, cell, "a question has no days: drop it."));
        Map<String, String> choices = new LinkedHashMap<>();
        for (Located choice : reader.items("choices")) {
            choice.entries().forEach((word, name) -> choices.put(word, name.text()));
        }
        Question question = new Question(
                id,
                reader.text("path"),
                reader.text("ask"),
                reader.text("kind"),
                choices,
                Optional.of(reader.text("choices-from", "")).filter(s -> !s.isEmpty()),
                reader.text("group"));
        reader.finish();
        return question;
    }

    private String head(Map<String, Located> head, String name) {
        Located found = head.get(name);
        if (found == null) {
            root.complain("lacks \"" + name + "\".", "add " + name + ": at the top of the table.");
            return "?";
        }
        String text = found.text();
        return text.isEmpty() ? "?" : text;
    }

    static Optional<Confidence> confidence(Located place) {
        return RowReader.constant(place, Confidence.class);
    }
}
