package org.fumewarden.whatif;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.fumewarden.advice.Advice;
import org.fumewarden.advice.Check;
import org.fumewarden.advice.OpenQuestion;
import org.fumewarden.advice.Reason;
import org.fumewarden.advice.RequiredFactor;
import org.fumewarden.advice.Respirator;
import org.fumewarden.advice.UnitInHand;

/** What moved between two pieces of advice, and which rules began or ceased to hold. */
public final class Differences {
    private final Advice before;
    private final Advice after;
    private final List<Difference> found = new ArrayList<>();

    private Differences(Advice before, Advice after) {
        this.before = before;
        this.after = after;
    }

    /** Compares two pieces of advice; empty when nothing a reader acts on has moved. */
    public static List<Difference> between(Advice before, Advice after) {
        Differences differences = new Differences(before, after);
        differences.compare();
        return List.copyOf(differences.found);
    }

    private void compare() {
        move(
                "status",
                before.status().key(),
                after.status().key(),
                Stream.concat(before.stops().stream(), before.conflicts().stream())
                        .toList(),
                Stream.concat(after.stops().stream(), after.conflicts().stream())
                        .toList());
        move(
                "required factor",
                factor(before.requiredFactor()),
                factor(after.requiredFactor()),
                before.requiredFactor().reasons(),
                after.requiredFactor().reasons());
        move(
                "recommended",
                recommended(before),
                recommended(after),
                before.recommended().map(Respirator::reasons).orElse(List.of()),
                after.recommended().map(Respirator::reasons).orElse(List.of()));
        move(
                "unit",
                before.unit().map(UnitInHand::condition).orElse("none"),
                after.unit().map(UnitInHand::condition).orElse("none"),
                before.unit().map(UnitInHand::reasons).orElse(List.of()),
                after.unit().map(UnitInHand::reasons).orElse(List.of()));
        respirators();
        questions();
        checks();
        sentences("must not start or enter", Advice::stops);
        sentences("before any respirator", Advice::controlsFirst);
        sentences("filter", Advice::filters);
        sentences("caution", Advice::cautions);
        sentences("disagreement", Advice::conflicts);
    }

    private void respirators() {
        Map<String, Respirator> old = byId(before.respirators());
        Map<String, Respirator> now = byId(after.respirators());
        for (String id : union(old.keySet(), now.keySet())) {
            Respirator was = old.get(id);
            Respirator is = now.get(id);
            move(
                    "respirator " + id,
                    was == null ? "not in the code" : words(was),
                    is == null ? "not in the code" : words(is),
                    was == null ? List.of() : all(was),
                    is == null ? List.of() : all(is));
        }
    }

    private static String words(Respirator respirator) {
        String factor =
                respirator.factor().map(f -> ", factor " + f.toPlainString()).orElse("");
        return respirator.verdict().key() + factor + ", filter " + respirator.filter();
    }

    private static List<Reason> all(Respirator respirator) {
        return Stream.concat(respirator.reasons().stream(), respirator.conditions().stream())
                .toList();
    }

    private static Map<String, Respirator> byId(List<Respirator> respirators) {
        return respirators.stream()
                .collect(Collectors.toMap(
                        Respirator::deviceClass, Function.identity(), (a, b) -> a, LinkedHashMap::new));
    }

    private void questions() {
        Map<String, OpenQuestion> old =
                before.questions().stream().collect(Collectors.toMap(OpenQuestion::question, Function.identity()));
        Map<String, OpenQuestion> now =
                after.questions().stream().collect(Collectors.toMap(OpenQuestion::question, Function.identity()));
        for (String id : new TreeSet<>(union(old.keySet(), now.keySet()))) {
            move(
                    "question " + id,
                    old.containsKey(id) ? "open" : "not open",
                    now.containsKey(id) ? "open" : "not open",
                    old.containsKey(id) ? old.get(id).reasons() : List.of(),
                    now.containsKey(id) ? now.get(id).reasons() : List.of());
        }
    }

    private void checks() {
        Map<String, Check> old = before.checks().stream().collect(Collectors.toMap(Check::id, Function.identity()));
        Map<String, Check> now = after.checks().stream().collect(Collectors.toMap(Check::id, Function.identity()));
        for (String id : new TreeSet<>(union(old.keySet(), now.keySet()))) {
            move(
                    "duty " + id,
                    old.containsKey(id) ? old.get(id).what() : "not due",
                    now.containsKey(id) ? now.get(id).what() : "not due",
                    old.containsKey(id) ? List.of(reason(old.get(id))) : List.of(),
                    now.containsKey(id) ? List.of(reason(now.get(id))) : List.of());
        }
    }

    private static Reason reason(Check check) {
        return new Reason(
                check.step(),
                check.id(),
                check.id(),
                check.what(),
                check.source(),
                check.clause(),
                "",
                check.confidence());
    }

    /** Sentences that are said on one side only. */
    private void sentences(String what, Function<Advice, List<Reason>> part) {
        List<Reason> gone = without(part.apply(before), part.apply(after));
        List<Reason> come = without(part.apply(after), part.apply(before));
        gone.forEach(r -> found.add(new Difference(what, r.says(), "no longer said", List.of(r), List.of())));
        come.forEach(r -> found.add(new Difference(what, "not said", r.says(), List.of(), List.of(r))));
    }

    private void move(String what, String was, String is, List<Reason> oldReasons, List<Reason> newReasons) {
        if (!was.equals(is)) {
            found.add(new Difference(what, was, is, without(oldReasons, newReasons), without(newReasons, oldReasons)));
        }
    }

    private static List<Reason> without(List<Reason> these, List<Reason> those) {
        Set<String> said = those.stream().map(Differences::key).collect(Collectors.toSet());
        return these.stream().filter(r -> !said.contains(key(r))).toList();
    }

    private static String key(Reason reason) {
        return reason.rule() + " " + reason.says();
    }

    private static String factor(RequiredFactor factor) {
        return factor.value().stripTrailingZeros().toPlainString() + " for " + factor.agent()
                + (factor.open() ? ", still open" : "");
    }

    private static String recommended(Advice advice) {
        return advice.recommended().map(Respirator::deviceClass).orElse("none");
    }

    private static Set<String> union(Set<String> a, Set<String> b) {
        Set<String> all = new java.util.LinkedHashSet<>(a);
        all.addAll(b);
        return all;
    }
}
