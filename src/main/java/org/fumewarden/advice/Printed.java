package org.fumewarden.advice;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.commons.lang3.StringUtils;
import org.fumewarden.codes.CodeBook;
import org.fumewarden.codes.CodeCard;
import org.fumewarden.codes.Document;
import org.fumewarden.codes.EditedWords;
import org.fumewarden.model.Act;
import org.fumewarden.model.Answer;
import org.fumewarden.model.Benchmark;
import org.fumewarden.model.Breath;
import org.fumewarden.model.BreathingRate;
import org.fumewarden.model.Citation;
import org.fumewarden.model.ClauseFor;
import org.fumewarden.model.DangerLevel;
import org.fumewarden.model.Limit;
import org.fumewarden.model.Row;
import org.fumewarden.trail.Step;

/** What stands on a sheet though no rule reads it: acts, clauses of rules, names, titles of documents and levels of what is in the air. */
record Printed(Advice advice, CodeBook book, List<Row> rows) {
    /** As many rules as are named. */
    private static final int NAMED = 5;

    /** Those of some rows that somebody changed and that stand on the sheet. */
    Stream<Row> changed(Stream<Row> some) {
        return some.filter(row -> !row.ref().changed().isEmpty()).filter(this::stands);
    }

    /** True for an act, a clause, a level or a name that somebody deleted, and that would stand on this sheet. */
    static boolean with(Row deleted, Advice advice, CodeBook book, List<Row> rows) {
        return (deleted instanceof Act
                        || deleted instanceof ClauseFor
                        || agent(deleted).isPresent()
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
        if (row instanceof BreathingRate rate) {
            return advice.inputs().stream()
                    .anyMatch(i -> i instanceof Breath breath && breath.rate().equals(rate.id()));
        }
        Optional<String> agent = agent(row);
        if (agent.isPresent()) {
            return advice.accounts().stream().anyMatch(a -> a.account().agent().equals(agent.get()));
        }
        return CodeBook.named(row)
                .filter(named -> steps().anyMatch(step -> StringUtils.containsIgnoreCase(step.says(), named.getValue())
                                || StringUtils.contains(step.says(), named.getKey()))
                        || advice.inputs().stream()
                                .anyMatch(i -> i instanceof Answer answer
                                        && answer.value().equals(named.getKey())))
                .isPresent();
    }

    /** Of what a level is a level; empty for another row. */
    private static Optional<String> agent(Row row) {
        return row instanceof Limit limit
                ? Optional.of(limit.agent())
                : row instanceof Benchmark benchmark
                        ? Optional.of(benchmark.agent())
                        : row instanceof DangerLevel danger ? Optional.of(danger.agent()) : Optional.empty();
    }

    private Stream<Step> steps() {
        return advice.trail().steps().stream();
    }

    /** The code, where the program says something else of it, and the words that a task is read with. */
    Stream<ToCompare> code() {
        CodeCard card = book.card();
        Stream<ToCompare> words = words(book.vocabulary().aliases().edited(), "aliases", "Everyday words for answers");
        Stream<ToCompare> code = card.program().stream()
                .map(has -> new ToCompare(
                        card.id() + "-code#" + card.id(),
                        card.name() + ": named and described on this sheet",
                        card.name(),
                        card.edition(),
                        ToCompare.CHANGED + "the program has " + has + "."));
        return Stream.concat(code, words);
    }

    /** Words that somebody changed, each in a line while they are few. */
    private Stream<ToCompare> words(Map<String, String> edited, String row, String all) {
        return edited.size() > NAMED
                ? Stream.of(words(row, all, "other words"))
                : edited.entrySet().stream().map(e -> words(row + "#" + e.getKey(), e.getKey(), e.getValue()));
    }

    private ToCompare words(String row, String value, String has) {
        return new ToCompare(
                row,
                value + ": as this folder has them",
                book.card().name(),
                book.card().edition(),
                ToCompare.PROGRAM + has + ".");
    }

    /**
     * The rules, and the words of their sentences, that somebody changed, each in a line while they are few.
     *
     * @param edited by id, what the program has
     */
    Stream<ToCompare> rules(SortedMap<String, String> edited) {
        Map<String, String> words = new TreeMap<>(edited);
        words.keySet().removeIf(key -> !key.startsWith(EditedWords.WORD));
        Map<String, List<String>> alike = edited.keySet().stream()
                .filter(key -> !words.containsKey(key))
                .collect(Collectors.groupingBy(edited::get, TreeMap::new, Collectors.toList()));
        Stream<ToCompare> rules = alike.entrySet().stream()
                .map(same -> new ToCompare(
                        ToCompare.RULES + same.getValue().get(0),
                        named(same.getValue()) + ": as this folder has it",
                        book.card().name(),
                        book.card().edition(),
                        ToCompare.PROGRAM + same.getKey() + "."));
        return Stream.concat(rules, words(words, "words", "Words of translated sentences"));
    }

    private static String named(List<String> rules) {
        return rules.size() > NAMED
                ? rules.size() + " rules"
                : (rules.size() == 1 ? "Rule " : "Rules ") + String.join(" and ", rules);
    }

    /** The documents that are cited under another title than that of the program. */
    Stream<ToCompare> titles() {
        List<Document> renamed = book.documents().values().stream()
                .filter(document -> document.program().isPresent())
                .toList();
        if (renamed.isEmpty()) {
            return Stream.empty();
        }
        Set<String> cited = steps().flatMap(step -> Stream.concat(
                        Stream.of(step.citation()), step.premises().stream().flatMap(p -> p.citation().stream())))
                .map(Citation::source)
                .collect(Collectors.toSet());
        return renamed.stream()
                .filter(document -> cited.contains(document.id()))
                .map(document -> new ToCompare(
                        "sources#" + document.id(),
                        StringUtils.substringBefore(document.title(), Document.CHANGED) + ": cited under this title",
                        document.title(),
                        document.edition(),
                        ToCompare.CHANGED + "the program has "
                                + document.program().get() + "."));
    }
}
