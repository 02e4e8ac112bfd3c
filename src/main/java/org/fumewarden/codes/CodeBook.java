package org.fumewarden.codes;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableSet;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.fumewarden.model.Row;

/** The tables that hold under one code: the shared ones, its own and those it borrows. */
public final class CodeBook {
    /** The field that names a code. */
    public static final String CODE = "code";

    private static final Map<String, CodeBook> SHIPPED = new ConcurrentHashMap<>();

    private final RuleFolder rules;
    private final CodeCard card;
    private final List<TableFile> tables;
    private final List<DatedRow> all;
    private final List<DatedRow> ending;
    private final List<DatedRow> renamed;
    private final NavigableSet<LocalDate> days;
    private final Map<LocalDate, Set<Row>> turned = new ConcurrentHashMap<>();
    private final EditedRows edited;
    private final Map<LocalDate, Map<String, Row>> program = new ConcurrentHashMap<>();
    private final Vocabulary vocabulary;
    private final Map<String, Document> documents;
    private final String revision;
    private final List<String> folders;

    private CodeBook(
            RuleFolder rules,
            CodeCard card,
            List<String> folders,
            List<TableFile> tables,
            Vocabulary vocabulary,
            Map<String, Document> documents,
            String revision,
            EditedRows edited) {
        this.rules = rules;
        this.edited = edited;
        this.card = card;
        this.folders = folders;
        this.tables = tables;
        this.all = tables.stream().flatMap(t -> t.rows().stream()).toList();
        this.ending =
                all.stream().filter(r -> r.until().isBefore(CodeSummary.NEVER)).toList();
        this.renamed = BookWords.renamed(all);
        this.days = all.stream()
                .flatMap(r -> Stream.of(r.from(), r.until()))
                .filter(d -> d.isAfter(LocalDate.EPOCH) && d.isBefore(CodeSummary.NEVER))
                .collect(Collectors.toCollection(TreeSet::new));
        this.vocabulary = vocabulary;
        this.documents = documents;
        this.revision = revision;
    }

    /**
     * The rule folders that decide under a code, found without reading any table.
     *
     * @throws InputException when the code is not there or its card is wrong
     */
    public static List<String> folders(RuleFolder folder, String code) {
        return folders(card(folder, code));
    }

    /**
     * The card of a code, read without any table.
     *
     * @throws InputException when the code is not there or its card is wrong
     */
    public static CodeCard card(RuleFolder folder, String named) {
        String code = current(folder, named);
        Located root = folder.located(code + "/code.yaml");
        CodeCard card = CodeCard.read(code, root);
        root.settle();
        return card;
    }

    private static List<String> folders(CodeCard card) {
        List<String> folders = new ArrayList<>(List.of("shared", card.id()));
        folders.addAll(card.borrows());
        return List.copyOf(folders);
    }

    /** The id that a code has now; older files name some codes by an id of before, and people by the name of a country. */
    private static String current(RuleFolder folder, String code) {
        if (folder.codes().contains(code)) {
            return code;
        }
        return folder.codes().stream()
                .filter(id -> CodeCard.read(id, folder.located(id + "/code.yaml"))
                        .formerly()
                        .contains(code))
                .findFirst()
                .or(() -> Aliases.in(folder).meant("code", code).stream()
                        .filter(folder.codes()::contains)
                        .findFirst())
                .orElseThrow(() -> new InputException(
                        folder.codes().isEmpty()
                                ? folder.codeless()
                                : new Problem(
                                        folder.origin(),
                                        0,
                                        CODE,
                                        "is not a code of these rules: \"" + Located.shown(code) + "\".",
                                        Nearest.remedy(code, folder.codes()))));
    }

    /**
     * The tables of a code; those inside the program are read once.
     *
     * @throws InputException when the code is not there or a table is wrong
     */
    public static CodeBook read(RuleFolder folder, String named) {
        String id = current(folder, named);
        return folder.isShipped() ? SHIPPED.computeIfAbsent(id, code -> tables(folder, code)) : tables(folder, id);
    }

    private static CodeBook tables(RuleFolder folder, String code) {
        Located root = folder.located(code + "/code.yaml");
        EditedRows edited = EditedRows.in(folder);
        CodeCard card =
                CodeCard.read(code, root, edited.at(root.file(), root.line()).words());
        borrowed(folder, card, root);
        List<Problem> problems = new ArrayList<>(root.problems());
        List<String> folders = folders(card);
        List<TableFile> tables = new ArrayList<>();
        Map<String, Document> documents = new TreeMap<>();
        Affirmations noted = Affirmations.beside(folder);
        Function<String, Document> listed = Document.among(documents);
        for (String part : folders) {
            InputException.gather(problems, () -> documents.putAll(Document.listed(folder, part, edited)));
            for (String name : folder.names(part + "/tables/", ".yaml")) {
                InputException.gather(problems, () -> {
                    Located table = folder.located(name);
                    tables.add(new TableReader(folder.origin() + "/" + name, table, noted, edited, listed).read());
                    problems.addAll(table.problems());
                });
            }
        }
        problems.addAll(FormUnits.wrong(tables));
        if (folder.isEdited()) {
            problems.addAll(Overlaps.in(tables));
            problems.addAll(Misspelt.in(folder));
        }
        if (!problems.isEmpty()) {
            throw new InputException(problems);
        }
        return new CodeBook(
                folder,
                card,
                folders,
                List.copyOf(tables),
                BookWords.of(tables, Aliases.in(folder)),
                documents,
                folder.revision(folders),
                edited);
    }

    /**
     * One table, read without a code.
     *
     * @throws InputException when the table is wrong
     */
    public static TableFile table(RuleFolder folder, String name) {
        Located root = folder.located(name);
        TableFile table = new TableReader(folder.origin() + "/" + name, root).read();
        root.settle();
        return table;
    }

    /** Complains about a borrowed folder that is not there: it would look like a code without rules and limits. */
    private static void borrowed(RuleFolder folder, CodeCard card, Located root) {
        for (String borrowed : card.borrows()) {
            if (folder.names(borrowed + "/", "").isEmpty()) {
                root.complain(
                        "borrows the folder \"" + Located.shown(borrowed) + "\", which is not there.",
                        Nearest.remedy(borrowed, folder.folders()));
            }
        }
    }

    public CodeCard card() {
        return card;
    }

    /** The rule folders that decide under this code. */
    public List<String> folders() {
        return folders;
    }

    public List<TableFile> tables() {
        return tables;
    }

    public Vocabulary vocabulary() {
        return vocabulary;
    }

    /** The documents that rules and tables cite, by id. */
    public Map<String, Document> documents() {
        return documents;
    }

    /** The title of a document; its id where no list names it. */
    public String titled(String source) {
        return documents.containsKey(source) ? documents.get(source).title() : source;
    }

    /** The edition of a document as the list of documents has it. */
    public String edition(String source) {
        return documents.containsKey(source) ? documents.get(source).edition() : "not stated";
    }

    /** Where its rules lie, when somebody changed them; empty for those of the program. */
    public Optional<String> changedFolder() {
        return rules.changed(folders);
    }

    public String revision() {
        return revision;
    }

    /**
     * The sentences of its rules in another language.
     *
     * @throws InputException when they cannot be read
     */
    public Tongue tongue(String language) {
        return Tongue.read(rules, folders, language);
    }

    /** The same book with other names of some ids. */
    public CodeBook named(Map<String, String> names) {
        Map<String, String> all = new LinkedHashMap<>(vocabulary.names());
        all.putAll(names);
        Vocabulary spoken = new Vocabulary(vocabulary.questions(), vocabulary.catalogues(), all, vocabulary.aliases());
        return new CodeBook(rules, card, folders, tables, spoken, documents, revision, edited);
    }

    /** The id and the name of a row that names one. */
    public static Optional<Map.Entry<String, String>> named(Row row) {
        return BookWords.name(row);
    }

    /** The same book with the names that its ids have on a day. */
    public CodeBook on(LocalDate day) {
        Map<String, String> names = new LinkedHashMap<>();
        renamed.stream()
                .filter(r -> r.inForce(day))
                .flatMap(r -> BookWords.name(r.row()).stream())
                .forEach(name -> names.put(name.getKey(), name.getValue()));
        return vocabulary.names().entrySet().containsAll(names.entrySet()) ? this : named(names);
    }

    /** The days on which a row begins or ends. */
    public NavigableSet<LocalDate> days() {
        return days;
    }

    /** The rows that are otherwise on a day than on the day before: those that came, those that went and those that only last. */
    public Set<Row> changed(LocalDate day) {
        return turned.computeIfAbsent(day, d -> {
            Set<Row> unlike = new HashSet<>(rows(d.minusDays(1)));
            rows(d).stream().filter(row -> !unlike.remove(row)).toList().forEach(unlike::add);
            ended(d).stream().filter(r -> r.until().equals(d)).forEach(r -> unlike.add(r.row()));
            return Set.copyOf(unlike);
        });
    }

    /** The rows that still count on a day on which they have ended, since nothing follows them. */
    public List<DatedRow> ended(LocalDate day) {
        return LastingRows.on(day, ending, all).toList();
    }

    /** The rows in force on a day, in the order of tables and rows; of an own and a borrowed limit the stricter. */
    public List<Row> rows(LocalDate day) {
        List<Row> rows = StricterLimits.of(Stream.concat(all.stream().filter(r -> r.inForce(day)), ended(day).stream())
                .map(DatedRow::row)
                .toList());
        return Stream.concat(rows.stream(), SilentAgents.of(rows, all)).toList();
    }

    /** By {@link EditedRows#key}, what the program has in force on a day in the tables that somebody changed. */
    public Map<String, Row> program(LocalDate day) {
        return program.computeIfAbsent(day, d -> edited.program(d, tables));
    }
}
