package org.fumewarden.advice;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.fumewarden.model.Figures;

/**
 * What an advice tells people: state, factor, classes, filters, acts, duties and questions. Two with the same upshot make nobody
 * do anything else.
 */
record Upshot(
        Status status,
        BigDecimal factor,
        Optional<String> worn,
        Set<String> offered,
        Set<String> filters,
        Set<String> acts,
        Set<String> duties,
        Set<String> questions,
        Set<String> unit) {

    static Upshot of(Advice advice) {
        return new Upshot(
                advice.status(),
                advice.requiredFactor().value(),
                advice.recommended().map(Respirator::deviceClass),
                set(
                        advice.respirators().stream()
                                .filter(r -> r.verdict().offered())
                                .toList(),
                        Respirator::deviceClass),
                set(advice.respirators(), r -> r.verdict().offered() ? r.deviceClass() + " " + r.filter() : ""),
                set(
                        Stream.of(advice.controlsFirst(), advice.cautions(), advice.stops(), advice.interim())
                                .flatMap(List::stream)
                                .toList(),
                        r -> r.rule() + " " + r.subject()),
                set(advice.checks(), Check::id),
                set(advice.questions(), OpenQuestion::question),
                set(advice.unit().map(UnitInHand::reasons).orElse(List.of()), r -> r.rule() + " " + r.subject()));
    }

    private static <T> Set<String> set(Collection<T> of, Function<T, String> id) {
        return of.stream().map(id).collect(Collectors.toSet());
    }

    /** What is otherwise in another, in words; empty when nothing is. */
    List<String> unlike(Upshot other) {
        List<String> words = new ArrayList<>();
        add(words, status, other.status, "another state");
        String then = Figures.factor(other.factor);
        String now = Figures.factor(factor);
        add(words, now, then, "a factor of " + then + " instead of " + now);
        add(words, worn, other.worn, "another class");
        add(words, offered, other.offered, "other suitable classes");
        if (offered.equals(other.offered)) {
            add(words, filters, other.filters, "other filters");
        }
        add(words, acts, other.acts, "other measures");
        add(words, duties, other.duties, "other duties");
        add(words, questions, other.questions, "other questions");
        add(words, unit, other.unit, "another verdict on the unit");
        return words;
    }

    private static void add(List<String> words, Object now, Object then, String said) {
        if (!Objects.equals(now, then)) {
            words.add(said);
        }
    }
}
