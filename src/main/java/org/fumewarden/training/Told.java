package org.fumewarden.training;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.fumewarden.advice.Advice;
import org.fumewarden.advice.Advisor;
import org.fumewarden.advice.Bench;
import org.fumewarden.advice.Check;
import org.fumewarden.advice.Reason;
import org.fumewarden.advice.Respirator;
import org.fumewarden.codes.Vocabulary;
import org.fumewarden.model.DeviceClass;
import org.fumewarden.model.Duty;
import org.fumewarden.model.Row;
import org.fumewarden.report.html.Words;

/**
 * A task with its advice, in the language of the room.
 *
 * @param bench tries out changes
 * @param said the advice in that language, as far as the rules speak it
 */
record Told(Bench bench, Advice said, Vocabulary vocabulary, List<Row> rows, Words words) {
    /** Decides the task of a bench. */
    static Told of(Bench bench, Words words) {
        Advisor advisor = bench.advisor(bench.code());
        Advisor speaking = advisor.speaking(words.language(), words.names());
        Advice said = speaking.advise(bench.task(bench.code(), Map.of()));
        return new Told(
                bench, said, speaking.base().book().vocabulary(), advisor.base().rowsOn(said.on()), words);
    }

    ClauseCitations clauses() {
        return new ClauseCitations(said.codeUsed().id(), words);
    }

    /** The same task with changes. */
    Told with(Map<String, String> changes) {
        return of(bench.with(changes), words);
    }

    String say(String key, Object... parts) {
        return words.say("ui.training." + key, parts);
    }

    /** The row of a class. */
    DeviceClass device(String id) {
        return all(DeviceClass.class).stream()
                .filter(d -> d.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    /** The classes of this code. */
    List<DeviceClass> devices() {
        return said.respirators().stream().map(r -> device(r.deviceClass())).toList();
    }

    Optional<Respirator> respirator(String id) {
        return said.respirators().stream()
                .filter(r -> r.deviceClass().equals(id))
                .findFirst();
    }

    /** The name of a class as people read it. */
    String name(Respirator respirator) {
        return words.sayOr("device." + respirator.deviceClass(), respirator.name());
    }

    static boolean suitable(Respirator respirator) {
        return respirator.verdict().offered();
    }

    List<Respirator> suitable() {
        return said.respirators().stream().filter(Told::suitable).toList();
    }

    /** The class that is recommended, or else the first that is suitable. */
    Optional<Respirator> best() {
        return said.recommended().or(() -> suitable().stream().findFirst());
    }

    /** What bars or leaves open every class, most serious first. */
    Optional<Reason> stop() {
        return said.stops().stream().findFirst().or(() -> said.respirators().stream()
                .filter(r -> !suitable(r))
                .flatMap(r -> r.reasons().stream())
                .findFirst());
    }

    /** Why no filter will do: what closes a filtering class because of the air. */
    Optional<Reason> noFilter() {
        return said.respirators().stream()
                .filter(r -> device(r.deviceClass()).filters())
                .flatMap(r -> r.reasons().stream().filter(one -> Mistake.ofTheAir(one, device(r.deviceClass()))))
                .filter(r -> !r.rule().equals("SHARED-EXCLUSION-020"))
                .findFirst();
    }

    /** The duties that are due, by what is done, in the order of the advice. */
    Map<String, Check> due() {
        Map<String, Duty> duties =
                all(Duty.class).stream().collect(Collectors.toMap(Duty::id, d -> d, (one, other) -> one));
        Map<String, Check> due = new LinkedHashMap<>();
        for (Check check : said.checks().stream()
                .filter(c -> !DutyWords.PAPERS.contains(c.id()))
                .toList()) {
            due.putIfAbsent(duties.get(check.id()).doneBy(), check);
        }
        return due;
    }

    /** What a duty orders; in another language than that of the tables by its name, where it has no sentence of its own. */
    String what(Check check) {
        String deed = all(Duty.class).stream()
                .filter(d -> d.id().equals(check.id()))
                .findFirst()
                .map(d -> deed(d.doneBy()))
                .orElse(check.what());
        return words.ofRuleBase() ? check.what() : words.sayOr("duty." + check.id(), say("due", deed));
    }

    /** What is done, in words. */
    String deed(String doneBy) {
        return words.sayOr("done." + doneBy, vocabulary.name(doneBy.replace('/', '-')));
    }

    <R extends Row> List<R> all(Class<R> type) {
        return rows.stream().filter(type::isInstance).map(type::cast).toList();
    }
}
