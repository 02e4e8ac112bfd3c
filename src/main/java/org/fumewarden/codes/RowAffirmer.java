package org.fumewarden.codes;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.commons.lang3.StringUtils;
import org.fumewarden.model.Confidence;
import org.fumewarden.model.Row;

/** Writes somebody's comparison of a row with its document into the file beside the rules, and changes no table. */
public final class RowAffirmer {
    /** Between the address of a row and the day on which it begins, where another edition of it is in force now. */
    static final String FROM = " from ";

    private static final String HEAD =
            "# Values of the rules beside this file that people of this house compared with their"
                    + " documents.\n# Each holds for the value it was made for; fumewarden check names those that are void.\naffirmations:\n";

    /**
     * What was written.
     *
     * @param file the file that it was added to
     * @param rows the rows that the check raises, each with what it says
     * @param other the document of the rows, where another one was compared; empty otherwise
     */
    public record Written(Path file, List<String> rows, String other, Confidence before, Confidence after) {}

    private final Path folder;

    /** An affirmer of the rows in a folder of rules. */
    public RowAffirmer(Path folder) {
        this.folder = folder;
    }

    /**
     * Records that somebody compared a row with a document.
     *
     * @param address of the row as printed, for example {@code gb-limits#cadmium/twa}; the part before a slash means all rows below
     *     it; {@code from 2029-01-01} after it means the row that begins on that day, which may lie ahead
     * @param value what the document gives, when it was said
     * @throws InputException when there is no such row, when the document gives another value than the row has, or when the check
     *     cannot be written down as it is
     */
    public Written affirm(
            String address, Optional<String> value, String by, LocalDate on, String document, String place) {
        said("--by", by);
        said("--document", document);
        said("--place", place);
        List<DatedRow> before = find(address, on);
        before.forEach(row -> fresh(row, by, document, place));
        before.forEach(row -> agrees(row, value, document));
        StringBuilder entries = new StringBuilder();
        for (DatedRow row : before) {
            entries.append("  - {row: ")
                    .append(quoted(address(row)))
                    .append(", value: ")
                    .append(quoted(CellHash.of(row.row())))
                    .append(", by: ")
                    .append(quoted(by.strip()))
                    .append(", on: ")
                    .append(on)
                    .append(", document: ")
                    .append(quoted(document.strip()))
                    .append(", place: ")
                    .append(quoted(place.strip()))
                    .append("}\n");
        }
        Path file = folder.toAbsolutePath().normalize().resolveSibling(Affirmations.FILE);
        append(file, entries.toString());
        List<DatedRow> after = find(address, on);
        return new Written(
                file,
                before.stream()
                        .map(row -> address(row) + ": " + CellHash.words(row.row()))
                        .toList(),
                before.stream()
                        .map(DatedRow::source)
                        .filter(source -> !names(document, source))
                        .distinct()
                        .map(this::title)
                        .collect(Collectors.joining("; ")),
                confidence(before.get(0)),
                confidence(after.get(0)));
    }

    /** The address, with the day on which the row begins where it has one. */
    private static String address(DatedRow row) {
        String address = row.row().ref().address();
        return row.from().equals(CodeSummary.ALWAYS) ? address : address + FROM + row.from();
    }

    /** The same comparison is written down once. */
    private static void fresh(DatedRow row, String by, String document, String place) {
        for (Affirmation made : row.affirmations()) {
            if (made.by().equals(by.strip())
                    && made.document().equals(document.strip())
                    && made.place().equals(place.strip())) {
                throw problem(
                        "--affirm",
                        "is affirmed already: " + address(row) + ", by " + made.words() + ".",
                        "name another person, document or place.");
            }
        }
    }

    /** Nobody affirms that a document gives what it does not give. */
    private void agrees(DatedRow row, Optional<String> value, String document) {
        List<String> parts = List.of(value.orElse("").strip().split("\\s+", 2));
        String words = " " + CellHash.words(row.row()) + ",";
        if (value.isPresent()
                && (CellHash.numbers(row.row()).stream()
                                .noneMatch(n -> WrittenCell.same(n.toPlainString(), parts.get(0)))
                        || parts.size() > 1 && !words.contains(" " + parts.get(1) + ","))) {
            throw problem(
                    "--value",
                    "is " + value.get() + " in " + document + ", but the row has another: " + address(row) + ":"
                            + StringUtils.removeEnd(words, ",") + ".",
                    "read it again; where the document is right, change the row and type it apart. Nothing was written.");
        }
        if (!row.row().ref().changed().isEmpty() && names(document, row.source())) {
            throw problem(
                    "--document",
                    "is the one of the program, " + title(row.source()) + ", and "
                            + row.row().ref().changed() + ": " + address(row) + ":" + StringUtils.removeEnd(words, ",")
                            + ".",
                    "read it again; where the row is right, type it apart in " + RuleFolder.TYPED
                            + " first, with its document.");
        }
    }

    private String title(String source) {
        RuleFolder base = RuleFolder.at(folder);
        return base.folders().stream()
                .map(part -> Document.listed(base, part, new EditedRows()))
                .flatMap(listed -> Optional.ofNullable(listed.get(source)).stream())
                .map(Document::title)
                .findFirst()
                .orElse(source);
    }

    /** True when somebody's words for a document are its id or title, or hold one of them. */
    private boolean names(String words, String source) {
        return Stream.of(source, title(source))
                .anyMatch(name -> StringUtils.containsIgnoreCase(words, name)
                        || StringUtils.startsWithIgnoreCase(name, words.strip()));
    }

    private static Confidence confidence(DatedRow row) {
        return row.row().ref().citation().confidence();
    }

    private static void said(String option, String words) {
        if (words.isBlank() || words.chars().anyMatch(Character::isISOControl)) {
            throw problem(option, "must be one line of words.", "write it in quotes: " + option + " \"...\".");
        }
    }

    /**
     * The rows at or below an address; of several editions those that begin on the day named after {@code from}, else those in
     * force on the day of the check.
     */
    private List<DatedRow> find(String asked, LocalDate on) {
        String address = StringUtils.substringBefore(asked, FROM);
        Predicate<DatedRow> edition = asked.contains(FROM)
                ? r -> r.from()
                        .toString()
                        .equals(StringUtils.substringAfter(asked, FROM).strip())
                : r -> true;
        RuleFolder base = RuleFolder.at(folder);
        Affirmations affirmations = Affirmations.beside(base);
        EditedRows edited = EditedRows.in(base);
        TreeSet<String> known = new TreeSet<>();
        List<DatedRow> matches = new ArrayList<>();
        for (String name : base.names("", ".yaml")) {
            if (name.matches("[^/]+/tables/[^/]+\\.yaml")) {
                Located root = base.located(name);
                TableFile table =
                        new TableReader(base.origin() + "/" + name, root, affirmations, edited, Document::none).read();
                root.settle();
                for (DatedRow row : table.rows()) {
                    known.add(row.row().ref().address() + (row.inForce(on) ? "" : FROM + row.from()));
                    if (below(address, row.row()) && edition.test(row)) {
                        matches.add(row);
                    }
                }
            }
        }
        List<DatedRow> day = matches.stream().filter(r -> r.inForce(on)).toList();
        List<DatedRow> found = day.isEmpty() || asked.contains(FROM) ? matches : day;
        if (found.isEmpty()) {
            throw problem("--affirm", "names no row: \"" + Located.shown(asked) + "\".", Nearest.remedy(asked, known));
        }
        return found;
    }

    private static boolean below(String address, Row row) {
        String own = row.ref().address();
        return own.equals(address) || own.startsWith(address + "/");
    }

    private static String quoted(String words) {
        return "\"" + words.replace("\\", "\\\\").replace("\"", "\\\"") + "\"";
    }

    private static void append(Path file, String entries) {
        try {
            String text = Files.exists(file) ? Files.readString(file) : HEAD;
            String line = text.endsWith("\n") ? "" : "\n";
            Path fresh = Files.createTempFile(file.getParent(), "affirm", ".tmp");
            Files.write(fresh, (text + line + entries).getBytes(StandardCharsets.UTF_8));
            Files.move(fresh, file, StandardCopyOption.REPLACE_EXISTING);
        } catch (IOException e) {
            throw problem(file.toString(), "cannot be written (" + e.getMessage() + ").", "check its permissions.");
        }
    }

    private static InputException problem(String place, String message, String maybe) {
        return new InputException(new Problem(place, 0, "", message, maybe));
    }
}
