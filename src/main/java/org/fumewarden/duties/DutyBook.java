package org.fumewarden.duties;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.fumewarden.codes.CodeBook;
import org.fumewarden.model.Citation;
import org.fumewarden.model.Duty;
import org.fumewarden.model.Row;
import org.fumewarden.model.Term;
import org.fumewarden.model.Threshold;
import org.fumewarden.upkeep.AirLimits;
import org.fumewarden.upkeep.CylinderLevel;
import org.fumewarden.upkeep.FitLevels;

/**
 * What the tables of a code say about upkeep.
 *
 * @param duties every duty, with its conditions
 * @param terms the checks, alarm actions and never-rules
 */
public record DutyBook(String code, List<Duty> duties, List<Term> terms, Map<String, Threshold> thresholds) {
    public DutyBook {
        duties = List.copyOf(duties);
        terms = List.copyOf(terms);
        thresholds = Map.copyOf(thresholds);
    }

    /** The duties in force on a day. */
    public static DutyBook of(CodeBook book, LocalDate day) {
        List<Row> rows = book.rows(day);
        return new DutyBook(
                book.card().name(),
                rows.stream()
                        .filter(Duty.class::isInstance)
                        .map(Duty.class::cast)
                        .toList(),
                rows.stream()
                        .filter(Term.class::isInstance)
                        .map(Term.class::cast)
                        .toList(),
                rows.stream()
                        .filter(Threshold.class::isInstance)
                        .map(Threshold.class::cast)
                        .collect(Collectors.toMap(Threshold::id, t -> t, (a, b) -> b)));
    }

    /** The terms of a catalogue in table order. */
    public List<Term> catalogue(String name) {
        return terms.stream().filter(t -> t.catalogue().equals(name)).toList();
    }

    /** What the code says instead of the words of the tables, such as American ones. */
    public Map<String, String> wording() {
        return catalogue("wording").stream().collect(Collectors.toMap(Term::id, Term::name));
    }

    /** What the code allows in breathing air; nothing when its tables do not say. */
    public Optional<AirLimits> airLimits() {
        return airLimits(
                id -> thresholds.containsKey(id) ? thresholds.get(id).value() : null,
                Optional.ofNullable(thresholds.get("breathing-air-oil"))
                        .map(t -> t.ref().citation().source() + " "
                                + t.ref().citation().clause())
                        .orElse(code));
    }

    /** What the code asks of a fit test; nothing when its tables do not say. */
    public Optional<FitLevels> fitLevels() {
        Threshold half = thresholds.get("fit-factor-half");
        Threshold full = thresholds.get("fit-factor-full");
        if (half == null || full == null) {
            return Optional.empty();
        }
        Optional<Threshold> qualitative = Optional.ofNullable(thresholds.get("fit-qualitative-full"));
        return Optional.of(new FitLevels(
                half.value(),
                full.value(),
                qualitative.map(Threshold::value),
                Optional.ofNullable(thresholds.get("fit-exercises")).map(Threshold::value),
                cited(full),
                cited(qualitative.orElse(full))));
    }

    /** When the code wants a cylinder refilled; nothing when its tables do not say. */
    public Optional<CylinderLevel> cylinderLevel() {
        return Optional.ofNullable(thresholds.get("cylinder-recharge"))
                .map(t -> new CylinderLevel(t.value(), cited(t)));
    }

    private static String cited(Threshold threshold) {
        Citation citation = threshold.ref().citation();
        return citation.source() + " " + citation.clause();
    }

    static Optional<AirLimits> airLimits(Function<String, BigDecimal> values, String clause) {
        List<BigDecimal> found = Stream.of("oxygen-low", "oxygen-high", "carbon-monoxide", "carbon-dioxide", "oil")
                .map(id -> values.apply("breathing-air-" + id))
                .filter(Objects::nonNull)
                .toList();
        return found.size() == 5
                ? Optional.of(
                        new AirLimits(found.get(0), found.get(1), found.get(2), found.get(3), found.get(4), clause))
                : Optional.empty();
    }
}
