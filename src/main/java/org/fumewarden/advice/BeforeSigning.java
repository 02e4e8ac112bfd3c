package org.fumewarden.advice;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.fumewarden.assessment.ExposureTables;
import org.fumewarden.codes.CodeBook;
import org.fumewarden.codes.Document;
import org.fumewarden.codes.Vocabulary;
import org.fumewarden.model.AssignedFactor;
import org.fumewarden.model.Band;
import org.fumewarden.model.Citation;
import org.fumewarden.model.Confidence;
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
            AssignedFactor.class,
            Threshold.class,
            Band.class,
            DangerLevel.class,
            QuantityRange.class,
            FilterMatch.class,
            Member.class);
    private static final int[] STEPS = {1, 2, 5};

    /** As many classes as a sheet names that clears none. */
    private static final int NAMED = 2;

    private final ExposureTables figures;
    private final Vocabulary vocabulary;
    private final Map<String, Document> documents;
    private final Trail trail;
    private final RequiredFactor required;
    private final List<Respirator> offered;

    /** True when some class is recommended; otherwise the statement is that none is, and what it rests on is looked at. */
    private final boolean cleared;

    /** Steps by id. */
    private final Map<String, Step> steps = new HashMap<>();

    /** The steps that read a row, by the address of the row, nearest to the row first. */
    private final Map<String, List<Step>> readers = new LinkedHashMap<>();

    BeforeSigning(
            ExposureTables figures, CodeBook book, Trail trail, RequiredFactor required, List<Respirator> respirators) {
        this.figures = figures;
        this.vocabulary = book.vocabulary();
        this.documents = book.documents();
        this.trail = trail;
        this.required = required;
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

    List<ToCompare> write() {
        trail.steps().forEach(step -> steps.put(step.id(), step));
        behind().forEach(step -> step.premises().stream()
                .filter(p -> p.kind().equals("row"))
                .forEach(p -> readers.computeIfAbsent(p.address(), a -> new ArrayList<>())
                        .add(step)));
        return readers.keySet().stream()
                .sorted()
                .flatMap(address -> figures.at(address).stream())
                .filter(row -> VALUES.contains(row.getClass()) && asks(row) && turns(row))
                .sorted(Comparator.comparing(row -> VALUES.indexOf(row.getClass())))
                .map(this::entry)
                .toList();
    }

    private static boolean asks(Row row) {
        return row.ref().citation().confidence() == Confidence.MEMORY
                || !row.ref().beside().isEmpty();
    }

    /** The factor of a class that is offered beside the recommended one matters where the next lower factor would not do. */
    private boolean turns(Row row) {
        return !(row instanceof AssignedFactor factor)
                || !cleared
                || offered.stream()
                        .anyMatch(r -> r.verdict() == Suitability.RECOMMENDED
                                && r.deviceClass().equals(factor.deviceClass()))
                || lower(factor).map(f -> f.compareTo(required.value()) < 0).orElse(false);
    }

    private Optional<BigDecimal> lower(AssignedFactor factor) {
        return figures.all(AssignedFactor.class)
                .map(AssignedFactor::factor)
                .filter(f -> f.compareTo(factor.factor()) < 0)
                .max(Comparator.naturalOrder());
    }

    /** The steps that the answer rests on: the needs, the gates, the filters, the factors of what is offered, and all below them. */
    private Set<Step> behind() {
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

    private ToCompare entry(Row row) {
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
                cited.clause() + ", " + cited.edition(),
                matters(row));
    }

    private String value(Row row) {
        if (row instanceof Limit limit) {
            return vocabulary.name(limit.agent()) + ": limit of " + amount(limit.value()) + " "
                    + limit.unit().symbol() + ", " + limit.averaging().words();
        }
        if (row instanceof AssignedFactor factor) {
            return vocabulary.name(factor.deviceClass()) + ": factor " + amount(factor.factor());
        }
        if (row instanceof Threshold threshold) {
            return vocabulary.name(threshold.id()) + ": " + amount(threshold.value()) + " " + threshold.unit();
        }
        if (row instanceof Band band) {
            return vocabulary.name(band.band()) + ": " + amount(band.value()) + " from above " + amount(band.over())
                    + " to " + amount(band.upTo());
        }
        if (row instanceof DangerLevel danger) {
            return vocabulary.name(danger.agent()) + ": immediately dangerous at " + amount(danger.value()) + " "
                    + danger.unit().symbol();
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

    private String matters(Row row) {
        if (row instanceof Limit limit) {
            Optional<Need> need = need(limit);
            if (need.isPresent()) {
                return limit(limit, need.get());
            }
        }
        if (row instanceof AssignedFactor factor) {
            return factor(factor);
        }
        return "It decides: " + readers.get(row.ref().address()).get(0).says();
    }

    /** The largest need of the agent that was reckoned with this limit. */
    private Optional<Need> need(Limit limit) {
        return trail.all(Need.class).stream()
                .filter(n -> n.subject().equals(limit.agent()) && n.basis().equals("ratio"))
                .filter(n -> n.limit().compareTo(limit.value()) == 0)
                .reduce((a, b) -> b.exceeds(a) ? b : a);
    }

    private String limit(Limit limit, Need need) {
        BigDecimal down = step(limit.value(), false);
        BigDecimal up = step(limit.value(), true);
        BigDecimal then = times(need, limit.value(), down);
        String too = offered.stream()
                .filter(r -> r.verdict() == Suitability.RECOMMENDED)
                .filter(r -> r.factor().isPresent() && r.factor().get().compareTo(then) < 0)
                .map(r -> "; " + r.name() + " would then be too little")
                .findFirst()
                .orElse("");
        return "At " + amount(down) + " " + limit.unit().symbol() + " a factor of " + factorOf(then)
                + " would be needed instead of " + factorOf(need.value()) + too + "; at " + amount(up) + " for "
                + factorOf(times(need, limit.value(), up)) + ".";
    }

    private static BigDecimal times(Need need, BigDecimal now, BigDecimal other) {
        return need.value().multiply(now).divide(other, new MathContext(3, RoundingMode.CEILING));
    }

    /** The neighbour of a value among 1, 2 and 5 times the powers of ten. */
    private static BigDecimal step(BigDecimal value, boolean up) {
        int power = value.precision() - value.scale() - 1;
        List<BigDecimal> near = new ArrayList<>();
        for (int p = power - 1; p <= power + 1; p++) {
            for (int step : STEPS) {
                near.add(BigDecimal.valueOf(step).scaleByPowerOfTen(p));
            }
        }
        return up
                ? near.stream().filter(n -> n.compareTo(value) > 0).findFirst().orElseThrow()
                : near.stream()
                        .filter(n -> n.compareTo(value) < 0)
                        .reduce((a, b) -> b)
                        .orElseThrow();
    }

    private String factor(AssignedFactor factor) {
        Optional<BigDecimal> lower = lower(factor);
        if (lower.isEmpty()) {
            return "It is the lowest factor that this code gives.";
        }
        boolean enough = lower.get().compareTo(required.value()) >= 0;
        return "With a factor of " + amount(lower.get()) + " it would " + (enough ? "still" : "no longer")
                + " be enough: " + amount(required.value().max(BigDecimal.ONE)) + " is required.";
    }

    private static String factorOf(BigDecimal number) {
        return org.fumewarden.model.Figures.factor(number);
    }

    private static String amount(BigDecimal number) {
        return org.fumewarden.model.Figures.shown(number);
    }
}
