package org.fumewarden.check;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.apache.commons.lang3.StringUtils;
import org.fumewarden.codes.Problem;
import org.fumewarden.codes.ProgramFile;
import org.fumewarden.codes.RuleFolder;
import org.fumewarden.codes.TypedApart;
import org.fumewarden.codes.WrittenCell;

/**
 * Values of the tables typed a second time from the documents, apart from the tables, each with its source; they ship with the
 * program, so that an edit of a value or the loss of a rule is seen wherever the rules are checked. An organisation types its own
 * values in {@link RuleFolder#TYPED} beside its rules.
 */
public final class TypedValues {
    private static final List<String> FILES = List.of(
            "limits",
            "danger-levels",
            "molar-masses",
            "factors",
            "thresholds",
            "gas-filters",
            "work-rates",
            "shades",
            "emission",
            "endurance",
            "intervals");
    /** What a value is of: held as it stood, since no second document was typed for it. */
    private static final String HELD = "held";
    /** How far a value was seen, with the copy: the one list on which a row may rest that it says it was. */
    private static final String SEEN = "seen";

    static final String ONCE = "was typed once only.";

    private static final String AS_IT_STOOD = "as it stood";
    private static final String RULES = "rules";
    private static final String WITHDRAWN = "withdrawn";

    private final Map<String, TypedApart.Line> values = new LinkedHashMap<>();
    private final Map<String, TypedApart.Line> words = new LinkedHashMap<>();

    /** The values that ship with the program. */
    TypedValues() {
        FILES.forEach(file -> shipped(file, values));
        shipped(HELD, words);
        shipped(SEEN, words);
    }

    private static void shipped(String file, Map<String, TypedApart.Line> into) {
        TypedApart typed = TypedApart.read(ProgramFile.text(TypedValues.class, "typed-apart/" + file + ".csv"));
        for (TypedApart.Line line : typed.lines()) {
            if (into.put(line.key(), line) != null) {
                throw new IllegalStateException(file + ".csv holds " + line.key() + " twice");
            }
        }
        if (!typed.problems().isEmpty()) {
            throw new IllegalStateException(
                    file + ".csv " + typed.problems().get(0).text());
        }
    }

    /** What was typed, and from what. */
    private static String origin(TypedApart.Line typed) {
        return typed.source().contains(AS_IT_STOOD)
                ? "it was " + typed.value() + StringUtils.substringAfter(typed.source(), AS_IT_STOOD)
                : typed.value() + " was typed from " + typed.source();
    }

    Map<String, TypedApart.Line> values() {
        return values;
    }

    Map<String, TypedApart.Line> words() {
        return words;
    }

    /** What differs between a rule base and what was typed: changed and lost values, values nobody typed, lost rules. */
    public static List<Problem> check(RuleFolder folder) {
        TypedValues typed = new TypedValues();
        List<Problem> problems = typed.own(folder);
        Map<String, WrittenCell> cells = new LinkedHashMap<>();
        WrittenCell.all(folder).forEach(cell -> cells.put(cell.key(), cell));
        WrittenCell.words(folder).forEach(cell -> cells.put(cell.key(), cell));
        Map<String, WrittenCell> every = new HashMap<>(cells);
        WrittenCell.every(folder).forEach(cell -> every.putIfAbsent(cell.key(), cell));
        Set<String> tables = cells.values().stream().map(WrittenCell::table).collect(Collectors.toSet());
        Map<String, TypedApart.Line> all = new LinkedHashMap<>(typed.words);
        all.putAll(typed.values);
        RowChanges rows = RowChanges.in(folder);
        problems.addAll(rows.problems());
        for (TypedApart.Line value : all.values()) {
            if (rows.settled(value.table(), value.row())) {
                continue;
            }
            WrittenCell cell = every.get(value.key());
            if (cell == null) {
                if (tables.contains(value.table())) {
                    problems.add(new Problem(
                            folder.origin(),
                            0,
                            value.key(),
                            "is gone; " + value.source() + " has " + value.value() + ".",
                            "restore the row, or close it with until: and the first day on which it no longer holds."));
                }
            } else if (!WrittenCell.same(cell.value(), value.value())) {
                problems.add(new Problem(
                        cell.file(),
                        cell.line(),
                        value.key(),
                        "is " + cell.value() + ", but " + origin(value) + ".",
                        "compare it with the document; for a new value add a dated row, and type it a second time in "
                                + RuleFolder.TYPED + " beside the rules."));
            }
        }
        Set<String> named = new HashSet<>(all.keySet());
        for (WrittenCell cell : cells.values()) {
            if (!rows.settled(cell.table(), cell.row())
                    && (cell.isTypedTwice() || cell.saysSeen())
                    && named.add(cell.key())) {
                problems.add(cell.saysSeen() ? unseen(cell) : once(cell));
            }
        }
        problems.addAll(typed.lostRules(folder));
        problems.addAll(EditedCells.of(folder, named, rows));
        return problems;
    }

    private static Problem unseen(WrittenCell cell) {
        return new Problem(
                cell.file(),
                cell.line(),
                cell.key(),
                "is " + cell.value() + ", and no list says in which copy it was seen.",
                "say memory, or add a line " + cell.table() + "," + cell.row() + "," + cell.cell() + "," + cell.value()
                        + ",COPY to " + RuleFolder.TYPED + " beside the rules, for rules that ship to seen.csv.");
    }

    private static Problem once(WrittenCell cell) {
        return new Problem(
                cell.file(),
                cell.line(),
                cell.key(),
                ONCE,
                "add a line " + cell.table() + "," + cell.row() + "," + cell.cell() + ",VALUE,DOCUMENT to "
                        + RuleFolder.TYPED
                        + " beside the rules, or for rules that ship to src/main/resources/org/fumewarden/check/typed-apart.");
    }

    /** What an organisation typed beside its rules in place of a value that ships with the program, one line for each. */
    static List<String> replaced(RuleFolder folder) {
        TypedValues both = new TypedValues();
        Map<String, TypedApart.Line> shipped = Map.copyOf(both.values);
        both.own(folder);
        return both.values.values().stream()
                .filter(own -> shipped.containsKey(own.key()))
                .filter(own -> !WrittenCell.same(shipped.get(own.key()).value(), own.value()))
                .map(own -> "replaced " + own.key() + " is " + own.value() + " by " + RuleFolder.TYPED + " ("
                        + own.source()
                        + "); the program holds " + shipped.get(own.key()).value() + " ("
                        + shipped.get(own.key()).source() + ")")
                .toList();
    }

    private List<Problem> own(RuleFolder folder) {
        TypedApart own = TypedApart.beside(folder);
        own.lines().forEach(line -> values.put(line.key(), line));
        return new ArrayList<>(own.problems());
    }

    private List<Problem> lostRules(RuleFolder folder) {
        Map<String, String> shipped = new HashMap<>();
        RuleBaseCheck.rules(RuleFolder.shipped()).forEach(rule -> shipped.put(rule.id(), rule.folder()));
        RuleBaseCheck.rules(folder).forEach(rule -> shipped.remove(rule.id()));
        return new TreeSet<>(shipped.keySet())
                .stream()
                        .filter(id -> folder.folders().contains(shipped.get(id)))
                        .filter(id -> !values.containsKey(RULES + " / " + id + " / " + WITHDRAWN))
                        .map(id -> new Problem(
                                folder.origin(),
                                0,
                                id,
                                "is a rule of the program that this rule base has not.",
                                "restore it, or close it with @until; to withdraw it for good add the line " + RULES
                                        + ","
                                        + id + "," + WITHDRAWN + ",DATE,REASON to " + RuleFolder.TYPED
                                        + " beside the rules."))
                        .toList();
    }
}
