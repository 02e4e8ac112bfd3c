package org.fumewarden.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.fumewarden.codes.CodeBook;
import org.fumewarden.codes.DatedRow;
import org.fumewarden.codes.InputException;
import org.fumewarden.codes.Problem;
import org.fumewarden.codes.RuleFolder;
import org.fumewarden.codes.TableFile;
import org.fumewarden.model.Duty;
import org.fumewarden.model.DutyCondition;
import org.fumewarden.model.Member;
import org.fumewarden.model.Row;
import org.fumewarden.model.Term;

/** Duties that no scenario brings up: a table row that nobody would ever read on a sheet. */
final class DutyReach {
    private DutyReach() {}

    /** One problem for each; those that hang on an event, and those listed as of the register alone, are excused. */
    static List<Problem> problems(RuleFolder folder, List<ScenarioRun> runs) {
        Set<String> seen = runs.stream()
                .flatMap(r -> r.shown().stream())
                .flatMap(s -> s.duties().stream())
                .collect(Collectors.toCollection(TreeSet::new));
        List<Problem> problems = new ArrayList<>();
        for (String code : folder.codes()) {
            try {
                problems.addAll(problems(CodeBook.read(folder, code), seen));
            } catch (InputException e) {
                problems.addAll(e.problems());
            }
        }
        return problems.stream().distinct().toList();
    }

    private static List<Problem> problems(CodeBook book, Set<String> seen) {
        List<Row> rows = book.tables().stream()
                .flatMap(t -> t.rows().stream())
                .map(DatedRow::row)
                .toList();
        Set<String> events = rows.stream()
                .filter(r -> r instanceof Member m && m.set().equals("circumstances-of-the-register"))
                .map(r -> ((Member) r).item())
                .collect(Collectors.toSet());
        Set<String> excused = rows.stream()
                .filter(r -> r instanceof DutyCondition c && events.contains(c.circumstance()))
                .map(r -> ((DutyCondition) r).duty())
                .collect(Collectors.toCollection(TreeSet::new));
        rows.stream()
                .filter(r -> r instanceof Term t && t.catalogue().equals("duty-of-the-register"))
                .forEach(r -> excused.add(((Term) r).id()));
        List<Problem> problems = new ArrayList<>();
        for (TableFile table : book.tables()) {
            for (DatedRow row : table.rows()) {
                if (row.row() instanceof Duty duty && !seen.contains(duty.id()) && !excused.contains(duty.id())) {
                    problems.add(
                            new Problem(
                                    table.file(),
                                    row.line(),
                                    duty.id(),
                                    "appears in no scenario.",
                                    "add a scenario with checks: [" + duty.id()
                                            + "], or list it in rules/shared/tables/circumstance-words.yaml as duty-of-the-register."));
                }
            }
        }
        return problems;
    }
}
