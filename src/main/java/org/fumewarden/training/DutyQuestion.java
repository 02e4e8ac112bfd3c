package org.fumewarden.training;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.fumewarden.advice.Check;
import org.fumewarden.model.Duty;

/** Which duty is due with a task. Free words name further duties than the choices do. */
final class DutyQuestion {
    private static final String DONE = "done:";
    private static final String WRONG = "practice:";

    private final Told told;
    private final Map<String, Check> due;
    /** The one that the choices show. */
    private List<String> asked = List.of();

    private DutyQuestion(Told told) {
        this.told = told;
        this.due = told.due();
    }

    static Optional<RoundItem> about(Told told, Random random) {
        DutyQuestion question = new DutyQuestion(told);
        return question.due.isEmpty() ? Optional.empty() : Optional.of(question.item(random));
    }

    private RoundItem item(Random random) {
        List<String> rights = new ArrayList<>(due.keySet());
        Collections.shuffle(rights, random);
        rights.sort(Comparator.comparing(DutyWords.VAGUE::contains));
        asked = List.of(rights.get(0));
        List<String> others = new ArrayList<>(told.all(Duty.class).stream()
                .map(Duty::doneBy)
                .distinct()
                .filter(DutyWords.OF_SPECIAL_WORK::contains)
                .filter(d -> !DutyWords.due(Set.of(d), due.keySet()))
                .filter(d -> step(d).isEmpty())
                .map(d -> DONE + d)
                .toList());
        Collections.shuffle(others, random);
        List<String> habits = new ArrayList<>(WordTable.rows("practices").stream()
                .filter(r -> r.words("topics").contains("upkeep")
                        || r.words("topics").contains("fit"))
                .map(r -> WRONG + r.text("id"))
                .toList());
        Collections.shuffle(habits, random);
        List<String> wrong = new ArrayList<>(habits.subList(0, 1));
        wrong.addAll(others.subList(0, Math.min(Distractors.COUNT - 2, others.size())));
        wrong.addAll(habits);
        return new RoundItem(
                "duty",
                told.say("ask.duty"),
                Distractors.of(DONE + rights.get(0), wrong, random, this::says, id -> mark(id).right()),
                RoundItem.Reads.WORDS,
                told.say("hint.duty"),
                this::mark);
    }

    private String says(String id) {
        return id.startsWith(DONE)
                ? told.deed(id.substring(DONE.length()))
                : wrongWords(id).row("wrong").says(told.words().language());
    }

    private static WordTable.Row wrongWords(String id) {
        return WordTable.rows("practices").stream()
                .filter(r -> id.equals(WRONG + r.text("id")))
                .findFirst()
                .orElseThrow();
    }

    private Mark mark(String answer) {
        if (answer.startsWith(WRONG)) {
            WordTable.Row row = wrongWords(answer);
            return Mark.wrong(answer, Mistake.of(row.text("mistake"), told.words()), some())
                    .saying(told.say(
                            "proper", row.row("right").says(told.words().language())))
                    .because(Practice.clause(told, row));
        }
        List<Set<String>> named = answer.startsWith(DONE)
                ? List.of(Set.of(answer.substring(DONE.length())))
                : byName(answer).map(d -> List.of(Set.of(d))).orElseGet(() -> DutyWords.read(answer));
        if (named.isEmpty()) {
            return Mark.unread(answer, told.say("unread.duty"));
        }
        if (named.stream().allMatch(n -> DutyWords.due(n, due.keySet()))) {
            Check check = due.get(due.keySet().stream()
                    .filter(d -> DutyWords.due(named.get(0), Set.of(d)))
                    .findFirst()
                    .orElseThrow());
            return Mark.right(answer).because(told.what(check), check.source() + " " + check.clause());
        }
        Set<String> deeds = named.stream().flatMap(Set::stream).collect(Collectors.toSet());
        Optional<String> step = deeds.stream().flatMap(d -> step(d).stream()).findFirst();
        boolean special = deeds.stream().anyMatch(DutyWords.OF_SPECIAL_WORK::contains);
        String mistake = step.isPresent() ? "another-step" : special ? "another-duty" : "good-but-not-asked";
        return Mark.wrong(
                answer, Mistake.of(mistake, told.words()), step.map(told::deed).orElseGet(this::some));
    }

    /** What is due about the same substance in place of a deed: offered and mandatory care are steps of one ladder. */
    private Optional<String> step(String deed) {
        String stem = DutyWords.stem(deed);
        return due.keySet().stream()
                .filter(d -> !stem.isEmpty() && !DutyWords.due(Set.of(deed), Set.of(d)))
                .filter(d -> DutyWords.stem(d).equals(stem))
                .findFirst();
    }

    private String some() {
        return told.say(
                "instead.duty",
                Stream.concat(asked.stream(), due.keySet().stream())
                        .distinct()
                        .limit(3)
                        .map(told::deed)
                        .collect(Collectors.joining("; ")));
    }

    /** A duty by the very name that the choices use. */
    private Optional<String> byName(String answer) {
        return Stream.concat(
                        due.keySet().stream(), told.all(Duty.class).stream().map(Duty::doneBy))
                .filter(d -> Plain.line(told.deed(d)).equals(Plain.line(answer)))
                .findFirst();
    }
}
