package org.fumewarden.check;

import java.math.BigDecimal;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.fumewarden.advice.Advice;
import org.fumewarden.advice.Check;
import org.fumewarden.advice.OpenQuestion;
import org.fumewarden.advice.Reason;
import org.fumewarden.advice.Respirator;
import org.fumewarden.codes.Located;
import org.fumewarden.codes.Nearest;
import org.fumewarden.engine.RuleBase;
import org.fumewarden.model.FilterNeed;
import org.fumewarden.trail.Step;

/** Compares advice with the expectations of a scenario; every difference becomes a complaint at its line. */
final class Expectations {
    private static final Set<String> OWN = Set.of(
            "fires",
            "silent",
            "steps",
            "status",
            "factor",
            "recommended",
            "suitable",
            "undecided",
            "barred",
            "filters",
            "filters-only",
            "checks",
            "not-checks",
            "questions",
            "says");
    private static final Set<String> KEYS =
            Stream.concat(OWN.stream(), ConclusionExpectations.keys().stream()).collect(Collectors.toUnmodifiableSet());

    private final Advice advice;
    private final Set<String> rules;
    private final Set<String> fired;

    Expectations(Advice advice, RuleBase base) {
        this.advice = advice;
        this.rules = base.cards().keySet();
        this.fired = advice.trail().steps().stream().map(Step::rule).collect(Collectors.toCollection(TreeSet::new));
    }

    /** Compares, and returns the rules that are named as silent. */
    Set<String> compare(Located expect) {
        Set<String> silent = new TreeSet<>();
        ConclusionExpectations concluded = new ConclusionExpectations(advice.trail());
        expect.entries(KEYS).forEach((key, place) -> {
            switch (key) {
                case "fires" -> rules(place).forEach(this::fires);
                case "silent" ->
                    rules(place).forEach(p -> {
                        silent(p);
                        silent.add(p.text());
                    });
                case "steps" -> place.entries().forEach(this::steps);
                case "status" -> same(place, "status", advice.status().key());
                case "factor" -> factor(place);
                case "recommended" ->
                    same(
                            place,
                            "recommended class",
                            advice.recommended().map(Respirator::deviceClass).orElse("none"));
                case "suitable" -> items(place).forEach(p -> verdict(p, p.text(), Set.of("suitable", "recommended")));
                case "undecided" -> items(place).forEach(p -> verdict(p, p.text(), Set.of("undecided")));
                case "barred" -> place.entries().forEach(this::barred);
                case "filters" -> place.entries().forEach(this::filter);
                case "filters-only" -> place.entries().forEach(this::onlyFilters);
                case "checks" ->
                    among(place, advice.checks().stream().map(Check::id).toList());
                case "not-checks" -> items(place).forEach(this::noCheck);
                case "questions" ->
                    among(
                            place,
                            advice.questions().stream()
                                    .map(OpenQuestion::question)
                                    .toList());
                case "says" -> items(place).forEach(this::says);
                default -> concluded.compare(key, place);
            }
        });
        return silent;
    }

    private static List<Located> items(Located place) {
        return place.isScalar() && !place.isNull() ? List.of(place) : place.items();
    }

    /** The items that name rules of this code; a complaint for each other. */
    private List<Located> rules(Located place) {
        return items(place).stream()
                .filter(p -> {
                    boolean known = rules.contains(p.text());
                    if (!known) {
                        p.complain(
                                "names a rule that this code does not have: \"" + Located.shown(p.text()) + "\".",
                                Nearest.remedy(p.text(), rules));
                    }
                    return known;
                })
                .toList();
    }

    private void fires(Located place) {
        if (!fired.contains(place.text())) {
            place.complain("expects " + place.text() + " to fire, but it is silent.", "it fired: " + shown(fired));
        }
    }

    private void silent(Located place) {
        if (fired.contains(place.text())) {
            String says = advice.trail().steps().stream()
                    .filter(s -> s.rule().equals(place.text()))
                    .map(Step::says)
                    .findFirst()
                    .orElse("");
            place.complain("expects " + place.text() + " to be silent, but it fires.", "look at: " + says);
        }
    }

    /** A rule that joins too much still fires; it shows in the number of its steps. */
    private void steps(String rule, Located place) {
        if (!rules.contains(rule)) {
            place.complain(
                    "counts steps of a rule that this code does not have: \"" + Located.shown(rule) + "\".",
                    Nearest.remedy(rule, rules));
            return;
        }
        long found = advice.trail().steps().stream()
                .filter(s -> s.rule().equals(rule))
                .count();
        place.decimal()
                .filter(d -> d.compareTo(BigDecimal.valueOf(found)) != 0)
                .ifPresent(d -> place.complain(
                        "expects " + d.toPlainString() + " steps of " + rule + ", but there are " + found + ".",
                        found + "."));
    }

    private static void same(Located place, String what, String found) {
        if (!place.text().equals(found)) {
            place.complain("expects the " + what + " " + place.text() + ", but it is " + found + ".", found + ".");
        }
    }

    private void factor(Located place) {
        place.entries(Set.of("value", "agent", "open")).forEach((key, cell) -> {
            BigDecimal value = advice.requiredFactor().value();
            switch (key) {
                case "value" ->
                    cell.decimal().filter(d -> d.compareTo(value) != 0).ifPresent(d -> {
                        String found = value.toPlainString();
                        cell.complain(
                                "expects a required factor of " + d.toPlainString() + ", but it is " + found + ".",
                                found + ".");
                    });
                case "agent" ->
                    same(cell, "deciding agent", advice.requiredFactor().agent());
                case "open" ->
                    same(
                            cell,
                            "factor's being open",
                            Boolean.toString(advice.requiredFactor().open()));
                default -> {}
            }
        });
    }

    private Optional<Respirator> respirator(Located place, String id) {
        Optional<Respirator> found = advice.respirators().stream()
                .filter(r -> r.deviceClass().equals(id))
                .findFirst();
        if (found.isEmpty()) {
            List<String> known =
                    advice.respirators().stream().map(Respirator::deviceClass).toList();
            place.complain(
                    "names a class that this code does not have: \"" + Located.shown(id) + "\".",
                    Nearest.remedy(id, known));
        }
        return found;
    }

    private void verdict(Located place, String id, Set<String> allowed) {
        respirator(place, id).filter(r -> !allowed.contains(r.verdict().key())).ifPresent(r -> {
            String why = r.reasons().stream()
                    .map(x -> x.rule() + " " + x.says())
                    .limit(2)
                    .collect(Collectors.joining(" / "));
            place.complain(
                    "expects " + id + " to be " + String.join(" or ", new TreeSet<>(allowed)) + ", but it is "
                            + r.verdict().key() + ".",
                    "look at: " + why);
        });
    }

    private void barred(String id, Located place) {
        Optional<Respirator> found = respirator(place, id);
        if (found.isEmpty()) {
            return;
        }
        verdict(place, id, Set.of("barred"));
        Set<String> reasons =
                found.get().reasons().stream().map(Reason::rule).collect(Collectors.toCollection(TreeSet::new));
        for (Located rule : rules(place)) {
            if (!reasons.contains(rule.text())) {
                rule.complain(
                        "expects " + rule.text() + " among what rules out " + id + ".", "it is: " + shown(reasons));
            }
        }
    }

    private Set<String> types(String agent) {
        return advice.trail().all(FilterNeed.class).stream()
                .filter(n -> n.agent().equals(agent))
                .map(FilterNeed::type)
                .collect(Collectors.toCollection(TreeSet::new));
    }

    private void onlyFilters(String agent, Located place) {
        Set<String> types = types(agent);
        Set<String> expected = items(place).stream().map(Located::text).collect(Collectors.toCollection(TreeSet::new));
        if (!types.equals(expected)) {
            place.complain("expects no filters for " + agent + " but " + shown(expected), "it is: " + shown(types));
        }
    }

    private void filter(String agent, Located place) {
        Set<String> types = types(agent);
        if (!types.contains(place.text())) {
            place.complain("expects the filter " + place.text() + " for " + agent + ".", "it is: " + shown(types));
        }
    }

    private static void among(Located place, Collection<String> found) {
        for (Located item : items(place)) {
            if (!found.contains(item.text())) {
                item.complain("expects " + item.text() + ", which is not there.", Nearest.remedy(item.text(), found));
            }
        }
    }

    private void noCheck(Located item) {
        if (advice.checks().stream().anyMatch(c -> c.id().equals(item.text()))) {
            item.complain("expects " + item.text() + " not to be due, but it is.", "leave it out.");
        }
    }

    private void says(Located place) {
        if (advice.trail().steps().stream().noneMatch(s -> s.says().contains(place.text()))) {
            List<String> sentences =
                    advice.trail().steps().stream().map(Step::says).distinct().toList();
            place.complain(
                    "expects a sentence with \"" + Located.shown(place.text()) + "\".",
                    Nearest.remedy(place.text(), sentences));
        }
    }

    private static String shown(Collection<String> words) {
        return words.isEmpty() ? "none." : String.join(" ", words) + ".";
    }
}
