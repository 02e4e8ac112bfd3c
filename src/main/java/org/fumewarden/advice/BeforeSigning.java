package org.fumewarden.advice;

import java.math.BigDecimal;
import java.time.LocalDate;
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
import java.util.SortedMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.commons.lang3.StringUtils;
import org.fumewarden.assessment.ExposureTables;
import org.fumewarden.codes.CodeBook;
import org.fumewarden.codes.EditedRows;
import org.fumewarden.engine.RuleBase;
import org.fumewarden.model.AssignedFactor;
import org.fumewarden.model.Band;
import org.fumewarden.model.Benchmark;
import org.fumewarden.model.Citation;
import org.fumewarden.model.DangerLevel;
import org.fumewarden.model.DutyCondition;
import org.fumewarden.model.FactorInForce;
import org.fumewarden.model.Figures;
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
    private final CodeBook book;
    private final SortedMap<String, String> rules;
    private final RowInWords words;
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
            RuleBase base,
            Trail trail,
            RequiredFactor required,
            List<Respirator> respirators,
            Status status) {
        this.figures = figures;
        this.book = base.book();
        this.rules = base.edited();
        this.words = new RowInWords(book.vocabulary());
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
    List<ToCompare> tried(Advice advice, WithOther other) {
        Upshot now = Upshot.of(advice);
        LocalDate day = advice.on();
        List<ToCompare> found = write(
                advice,
                row -> settled()
                        ? turns(row, now, other)
                        : "Not tried with other values, since this answer is not settled.");
        var told = ToCompare.byProgram(found, () -> other.program().map(now::unlike));
        return apart(Stream.of(ofOrganisation(now, other, day), deleted(advice, now, other), told)
                .flatMap(some -> some)
                .toList());
    }

    /** The values of the organisation, read or not, in whose place that of the program, or none, gives another answer. */
    private Stream<ToCompare> ofOrganisation(Upshot now, WithOther other, LocalDate day) {
        return figures.every().stream()
                .filter(row -> row.ref().citation().isOfOrganisation())
                .sorted(Comparator.comparing(row -> row.ref().address()))
                .filter(row -> !isChanged(row) || !read.contains(row.ref().address()))
                .flatMap(row -> {
                    Optional<Row> shipped =
                            Optional.ofNullable(book.program(day).get(EditedRows.key(row)));
                    String has = shipped.map(r -> StringUtils.substringAfter(words.value(r), ": "))
                            .orElse(ToCompare.NONE);
                    return instead(row, has, now.unlike(other.upshot(row, shipped)));
                });
    }

    /** The rows of the program that this folder has not, and with which the answer is another or the sheet would say more. */
    private Stream<ToCompare> deleted(Advice advice, Upshot now, WithOther other) {
        return book.program(advice.on()).values().stream()
                .filter(row -> figures.at(row.ref().address()).isEmpty())
                .flatMap(row -> Printed.with(row, advice, book, figures.every())
                        ? Stream.of(entry(row, ToCompare.PROGRAM + ToCompare.IT + "."))
                        : instead(row, ToCompare.IT, now.unlike(other.upshot(row, Optional.of(row)))));
    }

    private Stream<ToCompare> instead(Row row, String has, List<String> unlike) {
        return unlike.isEmpty()
                ? Stream.empty()
                : Stream.of(entry(row, ToCompare.PROGRAM + has + ": " + String.join(", ", unlike) + "."));
    }

    /** Two rows that are told in the same words are told apart by their addresses. */
    private static List<ToCompare> apart(List<ToCompare> found) {
        Map<String, Long> often =
                found.stream().collect(Collectors.groupingBy(ToCompare::value, Collectors.counting()));
        return found.stream()
                .map(value -> often.get(value.value()) == 1 ? value : value.withAddress())
                .toList();
    }

    /** Each value, without a decision on what another one would change. */
    List<ToCompare> untried(Advice advice) {
        return apart(write(advice, row -> ToCompare.UNTRIED));
    }

    private List<ToCompare> write(Advice advice, Function<Row, String> turns) {
        Printed printed = new Printed(advice, book, figures.every());
        for (Step step : behind()) {
            for (Premise premise : step.premises()) {
                if (premise.kind().equals("row") && (!premise.address().endsWith(VOLUME) || converts(step))) {
                    read.add(premise.address());
                }
            }
        }
        Stream<ToCompare> rows = Stream.concat(
                        figures.doubtful().stream()
                                .filter(row -> read.contains(row.ref().address())),
                        printed.changed(figures.doubtful().stream())
                                .filter(row -> !read.contains(row.ref().address())))
                .filter(row -> isChanged(row) || VALUES.contains(row.getClass()) && offered(row))
                .sorted(Comparator.<Row, Boolean>comparing(
                                row -> row.ref().changed().isEmpty())
                        .thenComparing(row -> VALUES.indexOf(row.getClass())))
                .map(row -> entry(
                        row,
                        row.ref().changed().isEmpty()
                                ? row instanceof AssignedFactor factor ? enough(factor) : turns.apply(row)
                                : ToCompare.CHANGED + row.ref().changed() + "."));
        return ToCompare.folded(Stream.of(printed.code(), printed.rules(rules), printed.titles(), rows)
                .flatMap(some -> some)
                .toList());
    }

    /** A volume of a mole that no level or limit in ppm meets decides nothing. */
    private static boolean converts(Step step) {
        return step.premises().stream().anyMatch(p -> p.words().contains(" ppm"));
    }

    /** Only an answer that is settled is tried with other values; one that is not is not signed. */
    private boolean settled() {
        return status == Status.COMPLETE || status == Status.DO_NOT_ENTER;
    }

    /** The conditions of a duty stand in its line, and it speaks for them. */
    private static boolean isChanged(Row row) {
        return !row.ref().changed().isEmpty() && !(row instanceof DutyCondition);
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
        trail.steps().forEach(step -> steps.put(step.id(), step));
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
                row.ref().address(), words.value(row) + beside, book.titled(cited.source()), cited.place(), matters);
    }

    /** What the next lower factor would change; empty when nothing. */
    private String enough(AssignedFactor factor) {
        return lower(factor)
                .filter(f -> f.compareTo(required.value()) < 0)
                .map(f -> "With a factor of " + Figures.shown(f) + " it would no longer be enough: "
                        + Figures.shown(required.value()) + " is required.")
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
}
