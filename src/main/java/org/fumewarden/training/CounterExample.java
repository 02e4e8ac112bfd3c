package org.fumewarden.training;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;
import org.fumewarden.check.Scenario;
import org.fumewarden.codes.InputException;
import org.fumewarden.codes.Located;
import org.fumewarden.codes.Question;
import org.fumewarden.model.Answer;
import org.fumewarden.trail.Step;

/**
 * The counter-example of a rule as a question: a story in which the rule speaks, and what would have to change so that it does not. Right is the
 * change of the counter-example, as the rule base has it; the engine has tried each of the others.
 */
final class CounterExample {
    private final Told told;
    private final Step spoken;
    private final Map<String, String> words = new LinkedHashMap<>();

    private CounterExample(Told told, Step spoken) {
        this.told = told;
        this.spoken = spoken;
    }

    /**
     * The changes that a scenario makes to the one that it extends, and the rules that fall silent by them.
     *
     * @param base the scenario that it extends
     */
    record Pair(Path base, Map<String, String> changes, List<String> silent) {
        /** The pair of a file; none when the file is no counter-example of plain values. */
        static Optional<Pair> of(Path file) {
            Map<String, Located> own = Scenario.read(file).own().entries();
            Map<String, Located> expect =
                    own.containsKey("expect") && own.get("expect").isMap()
                            ? own.get("expect").entries()
                            : Map.of();
            if (!own.containsKey("extends") || !own.containsKey("change") || !expect.containsKey("silent")) {
                return Optional.empty();
            }
            Map<String, String> changes = new LinkedHashMap<>();
            for (Map.Entry<String, Located> change : own.get("change").entries().entrySet()) {
                if (!change.getValue().isScalar()) {
                    return Optional.empty();
                }
                changes.put(
                        change.getKey(),
                        change.getValue().isNull() ? "" : change.getValue().text());
            }
            Path base = file.resolveSibling(own.get("extends").text()).normalize();
            return Optional.of(new Pair(base, changes, expect.get("silent").words()));
        }
    }

    /**
     * The question; none where the change says nothing in words.
     *
     * @param told the story in which the rule speaks
     */
    static Optional<RoundItem> about(Told told, Pair pair, Random random) {
        Optional<Step> spoken = told.said().trail().steps().stream()
                .filter(s -> pair.silent().contains(s.rule()) && !s.says().isEmpty())
                .findFirst();
        return spoken.flatMap(s -> new CounterExample(told, s).item(pair.changes(), random));
    }

    private Optional<RoundItem> item(Map<String, String> changes, Random random) {
        String right = "right";
        Optional<String> says = silencing(changes).filter(s -> !s.isEmpty());
        if (says.isEmpty()) {
            return Optional.empty();
        }
        words.put(right, says.get());
        List<Map.Entry<String, String>> others =
                new ArrayList<>(candidates(changes.keySet()).entrySet());
        Collections.shuffle(others, random);
        for (Map.Entry<String, String> other : others) {
            if (words.size() < Distractors.COUNT) {
                idle(Map.of(other.getKey(), other.getValue()))
                        .filter(s -> !s.isEmpty() && !words.containsValue(s))
                        .ifPresent(s -> words.put(other.getKey(), s));
            }
        }
        List<String> wrong =
                words.keySet().stream().filter(k -> !k.equals(right)).toList();
        return wrong.isEmpty()
                ? Optional.empty()
                : Optional.of(new RoundItem(
                        "counter-example",
                        told.say("ask.counter", spoken.says()),
                        Distractors.of(right, wrong, random, words::get, right::equals),
                        RoundItem.Reads.CHOICE,
                        told.say("hint.counter"),
                        this::mark));
    }

    private Mark mark(String answer) {
        Optional<String> named = words.entrySet().stream()
                .filter(e ->
                        e.getKey().equals(answer) || Plain.line(e.getValue()).equals(Plain.line(answer)))
                .map(Map.Entry::getKey)
                .findFirst();
        if (named.isEmpty()) {
            return Mark.unread(answer, told.say("unread.number"));
        }
        String clause = spoken.citation().source() + " " + spoken.citation().clause();
        Mark mark = named.get().equals("right")
                ? Mark.right(answer)
                : Mark.wrong(answer, Mistake.of("changes-what-does-not-matter", told.words()), words.get("right"));
        return mark.because(spoken.says(), clause);
    }

    /** Other answers that might be changed: each flag the other way round, each choice to its neighbour. */
    private Map<String, String> candidates(Set<String> taken) {
        Map<String, String> candidates = new LinkedHashMap<>();
        for (Answer answer : told.said().inputs().stream()
                .filter(Answer.class::isInstance)
                .map(Answer.class::cast)
                .toList()) {
            Optional<Question> question = told.vocabulary().question(answer.question());
            if (question.isPresent() && !taken.contains(answer.path())) {
                neighbour(question.get(), answer.value()).ifPresent(v -> candidates.put(answer.path(), v));
            }
        }
        return candidates;
    }

    private Optional<String> neighbour(Question question, String value) {
        if (Set.of("true", "false").contains(value)) {
            return Optional.of(value.equals("true") ? "false" : "true");
        }
        return told.vocabulary().choices(question).keySet().stream()
                .filter(v -> !v.equals(value))
                .findFirst();
    }

    /** The words of changes by which the rule falls silent. */
    private Optional<String> silencing(Map<String, String> changes) {
        return tried(changes).filter(t -> !speaks(t)).map(this::news);
    }

    /** The words of changes by which it does not. */
    private Optional<String> idle(Map<String, String> changes) {
        return tried(changes).filter(this::speaks).map(this::news);
    }

    private Optional<Told> tried(Map<String, String> changes) {
        try {
            return Optional.of(told.with(changes));
        } catch (InputException e) {
            return Optional.empty();
        }
    }

    private boolean speaks(Told other) {
        return other.said().trail().steps().stream()
                .anyMatch(s -> s.rule().equals(spoken.rule())
                        && s.conclusion().subject().equals(spoken.conclusion().subject()));
    }

    /** What is known after a change and was not known before it. */
    private String news(Told other) {
        Set<String> before = new HashSet<>(Facts.all(told));
        return Facts.all(other).stream().filter(f -> !before.contains(f)).collect(Collectors.joining(" "));
    }
}
