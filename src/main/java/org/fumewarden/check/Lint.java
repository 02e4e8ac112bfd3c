package org.fumewarden.check;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.fumewarden.codes.CodeBook;
import org.fumewarden.codes.DatedRow;
import org.fumewarden.codes.InputException;
import org.fumewarden.codes.Problem;
import org.fumewarden.codes.RuleFolder;
import org.fumewarden.engine.WrittenFile;
import org.fumewarden.engine.WrittenRule;
import org.fumewarden.model.Row;

/** Everything that is wrong with the text of rules and tables, before anything is compiled or run. */
final class Lint {
    private Lint() {}

    /** Checks a rule base; every problem names its file and line. */
    static List<Problem> check(RuleFolder folder, SourceList sources) {
        List<WrittenFile> files = WrittenFile.readAll(folder);
        List<WrittenRule> rules =
                files.stream().flatMap(f -> f.rules().stream()).toList();
        Set<Problem> problems = new LinkedHashSet<>(sources.problems());
        problems.addAll(RuleShape.check(files));
        for (WrittenRule rule : rules) {
            List<Problem> cited = new ArrayList<>();
            sources.require(rule.note("source").orElse(""), rule.file(), rule.line(), rule.id(), cited);
            if (rule.note("source").isPresent()) {
                problems.addAll(cited);
            }
        }
        problems.addAll(TongueLint.check(folder, rules));
        List<CodeBook> books = books(folder, problems);
        problems.addAll(
                RulePhases.check(rules, books.stream().map(CodeBook::folders).toList()));
        List<CodeBook> leftOut = leftOut(folder);
        for (String part : parts(rules)) {
            problems.addAll(RuleWords.check(
                    rules.stream().filter(r -> r.folder().equals(part)).toList(),
                    books.stream().filter(b -> b.folders().contains(part)).toList(),
                    leftOut.stream()
                            .filter(b -> b.folders().contains(part))
                            .flatMap(b -> ownRows(b, folder))
                            .toList()));
        }
        for (CodeBook book : books) {
            Set<String> ids = rules.stream()
                    .filter(r -> book.folders().contains(r.folder()))
                    .map(WrittenRule::id)
                    .collect(Collectors.toCollection(TreeSet::new));
            problems.addAll(TableLint.check(book, ids, sources));
        }
        return List.copyOf(problems);
    }

    /** The shipped codes that a rule base does not hold: a folder that it shares with them may speak of their sets. */
    private static List<CodeBook> leftOut(RuleFolder folder) {
        RuleFolder shipped = RuleFolder.shipped();
        return shipped.codes().stream()
                .filter(code -> !folder.codes().contains(code))
                .map(code -> CodeBook.read(shipped, code))
                .toList();
    }

    /** The rows of a shipped code that stand in no folder of the rule base. */
    private static Stream<Row> ownRows(CodeBook book, RuleFolder folder) {
        return book.tables().stream()
                .filter(t -> folder.folders().stream().noneMatch(own -> t.file().contains("/" + own + "/")))
                .flatMap(t -> t.rows().stream())
                .map(DatedRow::row);
    }

    private static Set<String> parts(List<WrittenRule> rules) {
        return rules.stream().map(WrittenRule::folder).collect(Collectors.toCollection(TreeSet::new));
    }

    /** What keeps a code from being read at all. */
    static Set<Problem> unread(RuleFolder folder) {
        Set<Problem> problems = new LinkedHashSet<>();
        books(folder, problems);
        return problems;
    }

    private static List<CodeBook> books(RuleFolder folder, Set<Problem> problems) {
        List<CodeBook> books = new ArrayList<>();
        for (String code : folder.codes()) {
            try {
                books.add(CodeBook.read(folder, code));
            } catch (InputException e) {
                problems.addAll(e.problems());
            }
        }
        return books;
    }
}
