package org.fumewarden.advice;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.commons.lang3.StringUtils;
import org.fumewarden.codes.CodeBook;
import org.fumewarden.codes.CodeCard;
import org.fumewarden.codes.Document;
import org.fumewarden.model.Act;
import org.fumewarden.model.Answer;
import org.fumewarden.model.Citation;
import org.fumewarden.model.ClauseFor;
import org.fumewarden.model.Row;
import org.fumewarden.trail.Step;

/** What stands on a sheet though no rule reads it: acts, clauses of rules, names and titles of documents. */
record Printed(Advice advice, CodeBook book, List<Row> rows) {
    /** As many rules as are named. */
    private static final int NAMED = 5;

    /** The rows that somebody changed. */
    Stream<Row> changed() {
        return rows.stream().filter(row -> !row.ref().changed().isEmpty()).filter(this::stands);
    }

    /** True for an act, a clause or a name that somebody deleted, and that would stand on this sheet. */
    static boolean with(Row deleted, Advice advice, CodeBook book, List<Row> rows) {
        return (deleted instanceof Act
                        || deleted instanceof ClauseFor
                        || CodeBook.named(deleted).isPresent())
                && new Printed(
                                advice,
                                book,
                                Stream.concat(rows.stream(), Stream.of(deleted)).toList())
                        .stands(deleted);
    }

    private boolean stands(Row row) {
        if (row instanceof Act act) {
            return Acts.of(act.part(), advice, rows).contains(act);
        }
        if (row instanceof ClauseFor clause) {
            return steps().anyMatch(step -> step.rule().equals(clause.rule()));
        }
        return CodeBook.named(row)
                .filter(named -> steps().anyMatch(step -> StringUtils.containsIgnoreCase(step.says(), named.getValue())
                                || StringUtils.contains(step.says(), named.getKey()))
                        || advice.inputs().stream()
                                .anyMatch(i -> i instanceof Answer answer
                                        && answer.value().equals(named.getKey())))
                .isPresent();
    }

    private Stream<Step> steps() {
        return advice.trail().steps().stream();
    }

    /** The code, where the program says something else of it. */
    Stream<ToCompare> code() {
        CodeCard card = book.card();
        return card.program().stream()
                .map(has -> new ToCompare(
                        card.id() + "-code#" + card.id(),
                        card.name() + ": named and described on this sheet",
                        card.name(),
                        card.edition(),
                        ToCompare.CHANGED + "the program has " + has + "."));
    }

    /**
     * The rules that somebody changed, each in a line while they are few.
     *
     * @param edited by id, what the program has
     */
    Stream<ToCompare> rules(SortedMap<String, String> edited) {
        Map<String, List<String>> alike =
                edited.keySet().stream().collect(Collectors.groupingBy(edited::get, TreeMap::new, Collectors.toList()));
        return alike.entrySet().stream()
                .map(same -> new ToCompare(
                        "rules#" + same.getValue().get(0),
                        named(same.getValue()) + ": as this folder has it",
                        book.card().name(),
                        book.card().edition(),
                        ToCompare.PROGRAM + same.getKey() + "."));
    }

    private static String named(List<String> rules) {
        return rules.size() > NAMED
                ? rules.size() + " rules"
                : (rules.size() == 1 ? "Rule " : "Rules ") + String.join(" and ", rules);
    }

    /** The documents that are cited under another title than that of the program. */
    Stream<ToCompare> titles() {
        Set<String> cited = steps().flatMap(step -> Stream.concat(
                        Stream.of(step.citation()), step.premises().stream().flatMap(p -> p.citation().stream())))
                .map(Citation::source)
                .collect(Collectors.toSet());
        return book.documents().values().stream()
                .filter(document -> document.program().isPresent() && cited.contains(document.id()))
                .map(document -> new ToCompare(
                        "sources#" + document.id(),
                        StringUtils.substringBefore(document.title(), Document.CHANGED) + ": cited under this title",
                        document.title(),
                        document.edition(),
                        ToCompare.CHANGED + "the program has "
                                + document.program().get() + "."));
    }
}
