package org.fumewarden.advice;

import java.math.BigDecimal;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.commons.lang3.StringUtils;
import org.fumewarden.assessment.ExposureTables;
import org.fumewarden.codes.CodeBook;
import org.fumewarden.codes.Document;
import org.fumewarden.codes.Vocabulary;
import org.fumewarden.model.AssignedFactor;
import org.fumewarden.model.Band;
import org.fumewarden.model.Benchmark;
import org.fumewarden.model.Citation;
import org.fumewarden.model.Confidence;
import org.fumewarden.model.CountedAs;
import org.fumewarden.model.DangerLevel;
import org.fumewarden.model.FactorInForce;
import org.fumewarden.model.FilterMatch;
import org.fumewarden.model.FilterNeed;
import org.fumewarden.model.Gate;
import org.fumewarden.model.Limit;
import org.fumewarden.model.Member;
import org.fumewarden.model.Need;
import org.fumewarden.model.QuantityRange;
import org.fumewarden.model.Row;
import org.fumewarden.model.Ruling;
import org.fumewarden.model.Standing;
import org.fumewarden.model.Stop;
import org.fumewarden.model.Threshold;
import org.fumewarden.trail.Premise;
import org.fumewarden.trail.Step;
import org.fumewarden.trail.Trail;

/** Finds the values behind an answer that somebody should compare with their text before signing, and says what each decides. */
final class BeforeSigning {
    private static final List<Class<? extends Row>> VALUES = List.of(
            Limit.class,
            Benchmark.class,
            AssignedFactor.class,
            Threshold.class,
            Band.class,
            DangerLevel.class,
            QuantityRange.class,
            FilterMatch.class,
            Member.class);
    private static final String VOLUME = "#molar-volume";
    /** As many classes as a sheet names that clears none. */
    private static final int NAMED = 2;

    private final ExposureTables figures;
    private final Vocabulary vocabulary;
    private final Map<String, Document> documents;
    private final Trail trail;
    private final RequiredFactor required;
    private final Status status;
    private final List<Respirator> offered;

    /** True when some class is recommended; otherwise the statement is that none is, and what it rests on is looked at. */
    private final boolean cleared;

    /** Steps by id. */
    private final Map<String, Step> steps = new HashMap<>();

    /** The addresses of the rows that the answer rests on. */
    private final Set<String> read = new HashSet<>();

    BeforeSigning(
            ExposureTables figures,
            CodeBook book,
            Trail trail,
            RequiredFactor required,
            List<Respirator> respirators,
            Status status) {
        this.figures = figures;
        this.vocabulary = book.vocabulary();
        this.documents = book.documents();
        this.trail = trail;
        this.required = required;
        this.status = status;
        this.cleared = respirators.stream().anyMatch(r -> r.verdict() == Suitability.RECOMMENDED);
        this.offered = cleared
                ? respirators.stream().filter(r -> r.verdict().offered()).toList()
                : named(respirators);
    }

    /** The classes that a sheet names which clears none: what is worn if entry cannot be avoided, or may do once all is answered. */
    private List<Respirator> named(List<Respirator> respirators) {
        Set<String> provisional = trail.all(Ruling.class).stream()
                .filter(r -> r.topic().equals("provisional"))
                .map(Ruling::value)
                .collect(Collectors.toSet());
        Suitability worn = respirators.stream().anyMatch(r -> r.verdict() == Suitability.SUITABLE)
                ? Suitability.SUITABLE
                : Suitability.UNDECIDED;
        return Stream.concat(
                        respirators.stream().filter(r -> r.verdict() == worn).limit(NAMED),
                        respirators.stream().filter(r -> provisional.contains(r.deviceClass())))
                .distinct()
                .toList();
    }

    /** Each value with what another one would change. */
    List<ToCompare> tried(Upshot now, WithOther other) {
        return write(row ->
                settled() ? turns(row, now, other) : "Not tried with other values, since this answer is not settled.");
    }

    /** Each value, without a decision on what another one would change. */
    List<ToCompare> untried() {
        return write(row -> ToCompare.UNTRIED);
    }

    private List<ToCompare> write(Function<Row, String> turns) {
        trail.steps().forEach(step -> steps.put(step.id(), step));
        behind().forEach(step -> step.premises().stream()
                .filter(p -> p.kind().equals("row") && (!p.address().endsWith(VOLUME) || converts(step)))
                .forEach(p -> read.add(p.address())));
        return read.stream()
                .sorted()
                .flatMap(address -> figures.at(address).stream())
                .filter(row -> VALUES.contains(row.getClass()) && asks(row) && offered(row))
                .sorted(Comparator.<Row, Boolean>comparing(
                                row -> row.ref().changed().isEmpty())
                        .thenComparing(row -> VALUES.indexOf(row.getClass())))
                .map(row -> entry(
                        row,
                        row.ref().changed().isEmpty()
                                ? row instanceof AssignedFactor factor ? enough(factor) : turns.apply(row)
                                : ToCompare.CHANGED + row.ref().changed() + "."))
                .toList();
    }

    /** A volume of a mole that no level or limit in ppm meets decides nothing. */
    private static boolean converts(Step step) {
        return step.premises().stream().anyMatch(p -> p.words().contains(" ppm"));
    }

    /** Only an answer that is settled is tried with other values; one that is not is not signed. */
    private boolean settled() {
        return status == Status.COMPLETE || status == Status.DO_NOT_ENTER;
    }

    private static boolean asks(Row row) {
        return row.ref().citation().confidence() == Confidence.MEMORY
                || !row.ref().beside().isEmpty()
                || !row.ref().changed().isEmpty();
    }

    /** False for the factor of a class that the sheet does not offer. */
    private boolean offered(Row row) {
        return !(row instanceof AssignedFactor factor)
                || offered.stream().anyMatch(r -> r.deviceClass().equals(factor.deviceClass()));
    }

    private Optional<BigDecimal> lower(AssignedFactor factor) {
        return figures.all(AssignedFactor.class)
                .map(AssignedFactor::factor)
                .filter(f -> f.compareTo(factor.factor()) < 0)
                .max(Comparator.naturalOrder());
    }

    /**
     * The steps that the answer rests on: of one that is settled all of them, since each value is tried; of an open one the
     * needs, the gates, the filters, the factors of what is named, and all below them.
     */
    private Collection<Step> behind() {
        if (settled()) {
            return trail.steps();
        }
        Set<String> classes = new HashSet<>();
        offered.forEach(r -> classes.add(r.deviceClass()));
        Deque<Step> open = new ArrayDeque<>();
        trail.concluding(Need.class).forEach(open::add);
        trail.concluding(Gate.class).forEach(open::add);
        trail.concluding(Stop.class).forEach(open::add);
        trail.concluding(FilterNeed.class).forEach(open::add);
        if (!cleared) {
            trail.concluding(Standing.class).forEach(open::add);
        }
        trail.concluding(FactorInForce.class)
                .filter(s -> classes.contains(s.conclusion().subject()))
                .forEach(open::add);
        Set<Step> met = new java.util.LinkedHashSet<>();
        while (!open.isEmpty()) {
            Step step = open.remove();
            if (met.add(step)) {
                step.premises().stream()
                        .filter(p -> p.kind().equals("step"))
                        .map(Premise::address)
                        .map(steps::get)
                        .filter(java.util.Objects::nonNull)
                        .forEach(open::add);
            }
        }
        return met;
    }

    private ToCompare entry(Row row, String matters) {
        Citation cited = row.ref().citation();
        String beside = row.ref().beside().isEmpty()
                ? ""
                : ToCompare.BESIDE + String.join(" or ", row.ref().beside());
        return new ToCompare(
                row.ref().address(),
                value(row) + beside,
                documents.containsKey(cited.source())
                        ? documents.get(cited.source()).title()
                        : cited.source(),
                cited.place(),
                matters);
    }

    String value(Row row) {
        if (row instanceof Limit limit) {
            return level("limit", limit);
        }
        if (row instanceof Benchmark benchmark) {
            return level("benchmark", benchmark.asLimit());
        }
        if (row instanceof AssignedFactor factor) {
            return vocabulary.name(factor.deviceClass()) + ": factor " + amount(factor.factor());
        }
        if (row instanceof Threshold threshold) {
            return vocabulary.name(threshold.id()) + ": "
                    + threshold.value().stripTrailingZeros().toPlainString()
                    + (threshold.unit().equals("factor") ? "" : " " + threshold.unit());
        }
        if (row instanceof Band band) {
            return vocabulary.name(band.band()) + ": " + amount(band.value()) + " from above " + amount(band.over())
                    + " to " + amount(band.upTo());
        }
        if (row instanceof DangerLevel danger) {
            return vocabulary.name(danger.agent()) + ": immediately dangerous at " + amount(danger.value()) + " "
                    + danger.unit().symbol() + danger.basis().after();
        }
        if (row instanceof QuantityRange range) {
            return vocabulary.name(range.of()) + ": " + amount(range.low()) + " to " + amount(range.high()) + " "
                    + range.unit();
        }
        if (row instanceof FilterMatch filter) {
            return vocabulary.name(filter.agent()) + ": filter " + filter.type()
                    + filter.highest().map(h -> ", up to " + amount(h) + " ppm").orElse("");
        }
        Member member = (Member) row;
        return vocabulary.name(member.item()) + ": listed among " + vocabulary.name(member.set());
    }

    private String level(String kind, Limit limit) {
        String name = vocabulary.name(limit.agent());
        String counted = name.contains(limit.fraction()) ? "" : new CountedAs(limit.fraction()).after();
        return name + ": " + kind + " of " + amount(limit.value()) + " "
                + limit.unit().symbol() + counted + ", " + limit.averaging().words();
    }

    /** What the next lower factor would change; empty when nothing. */
    private String enough(AssignedFactor factor) {
        return lower(factor)
                .filter(f -> f.compareTo(required.value()) < 0)
                .map(f -> "With a factor of " + amount(f) + " it would no longer be enough: " + amount(required.value())
                        + " is required.")
                .orElse("");
    }

    /** What another value would change; empty when nothing. */
    private static String turns(Row row, Upshot now, WithOther other) {
        List<String> found = new ArrayList<>();
        boolean turns = false;
        for (Neighbours.Neighbour next : Neighbours.of(row)) {
            List<String> unlike = now.unlike(other.upshot(row, next.row()));
            turns |= !unlike.isEmpty();
            found.add(next.says() + ": " + (unlike.isEmpty() ? "no change" : String.join(", ", unlike)));
        }
        return turns ? StringUtils.capitalize(String.join("; ", found)) + "." : "";
    }

    private static String amount(BigDecimal number) {
        return org.fumewarden.model.Figures.shown(number);
    }
}
