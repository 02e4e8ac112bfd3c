package org.fumewarden.check;

import java.math.BigDecimal;
import java.math.MathContext;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.fumewarden.codes.CodeBook;
import org.fumewarden.model.Agent;
import org.fumewarden.model.Answer;
import org.fumewarden.model.AssignedFactor;
import org.fumewarden.model.Averaging;
import org.fumewarden.model.DangerLevel;
import org.fumewarden.model.DeviceClass;
import org.fumewarden.model.Emitter;
import org.fumewarden.model.Exposure;
import org.fumewarden.model.Input;
import org.fumewarden.model.Judged;
import org.fumewarden.model.Limit;
import org.fumewarden.model.Member;
import org.fumewarden.model.Row;
import org.fumewarden.model.Threshold;
import org.fumewarden.model.Unit;
import org.fumewarden.model.Unknown;
import org.fumewarden.task.Task;

/**
 * A second statement of hazards, ratios, factors and gates, straight from the tables and without the engine. It knows only what
 * every code shares, so it says the least that must hold: engine and rules of a code may bar more, never less.
 */
final class Oracle {
    private final Task task;
    private final Tables tables;

    Oracle(Tables tables, Task task) {
        this.task = task;
        this.tables = tables;
    }

    /** The rows of a code on one day, by type, and the named sets among them. */
    record Tables(Map<Class<?>, List<Object>> rows, Map<String, Set<String>> sets) {
        static Tables of(CodeBook book, LocalDate day) {
            Map<Class<?>, List<Object>> rows = new HashMap<>();
            Map<String, Set<String>> sets = new HashMap<>();
            for (Row row : book.rows(day)) {
                rows.computeIfAbsent(row.getClass(), k -> new ArrayList<>()).add(row);
                if (row instanceof Member member) {
                    sets.computeIfAbsent(member.set(), k -> new TreeSet<>()).add(member.item());
                }
            }
            return new Tables(rows, sets);
        }
    }

    /** One exposure against one limit of the same averaging time, in the unit of the limit. */
    record Compared(String agent, Averaging averaging, BigDecimal level, BigDecimal limit) {
        boolean above(BigDecimal factor) {
            return level.compareTo(limit.multiply(factor)) > 0;
        }
    }

    private <T> List<T> all(Class<T> type) {
        List<T> found = new ArrayList<>();
        tables.rows().getOrDefault(type, List.of()).forEach(r -> found.add(type.cast(r)));
        task.inputs().stream().filter(type::isInstance).forEach(i -> found.add(type.cast(i)));
        return found;
    }

    Optional<String> answer(String question) {
        return all(Answer.class).stream()
                .filter(a -> a.question().equals(question))
                .map(Answer::value)
                .findFirst();
    }

    private boolean in(String set, String item) {
        return tables.sets().getOrDefault(set, Set.of()).contains(item);
    }

    /** Agents that must be known: listed, or principal in what the process, metal, coating and filler give off. */
    Set<String> principalAgents() {
        Set<String> agents = new TreeSet<>();
        for (Input input : task.inputs()) {
            if (input instanceof Exposure exposure) {
                agents.add(exposure.agent());
            } else if (input instanceof Judged judged) {
                agents.add(judged.agent());
            } else if (input instanceof Unknown unknown && unknown.question().startsWith("exposures.")) {
                agents.add(unknown.question().split("\\.")[1]);
            }
        }
        Optional<String> process = answer("process");
        for (Emitter emitter : all(Emitter.class)) {
            if (process.isPresent()
                    && emitter.rank().equals("principal")
                    && answer(emitter.question())
                            .filter(emitter.value()::equals)
                            .isPresent()
                    && in(emitter.processes(), process.get())) {
                agents.add(emitter.agent());
            }
        }
        return agents;
    }

    /** Every exposure that has a limit of its own averaging time. */
    List<Compared> compared() {
        List<Compared> compared = new ArrayList<>();
        for (Exposure exposure : all(Exposure.class)) {
            for (Limit limit : all(Limit.class)) {
                if (limit.agent().equals(exposure.agent()) && limit.averaging() == exposure.averaging()) {
                    compared.add(new Compared(
                            exposure.agent(), exposure.averaging(), in(limit.unit(), exposure), limit.value()));
                }
            }
        }
        return compared;
    }

    private BigDecimal in(Unit unit, Exposure exposure) {
        if (exposure.unit() == unit) {
            return exposure.level();
        }
        BigDecimal mass = all(Agent.class).stream()
                .filter(a -> a.id().equals(exposure.agent()))
                .findFirst()
                .orElseThrow()
                .molarMass()
                .orElseThrow();
        BigDecimal volume = all(Threshold.class).stream()
                .filter(t -> t.id().equals("molar-volume"))
                .findFirst()
                .orElseThrow()
                .value();
        return unit == Unit.PPM
                ? exposure.level().multiply(volume).divide(mass, MathContext.DECIMAL64)
                : exposure.level().multiply(mass).divide(volume, MathContext.DECIMAL64);
    }

    /** Sums of ratios of agents with like effect, where there are two or more. */
    Map<String, BigDecimal> mixtures() {
        Map<String, BigDecimal> sums = new TreeMap<>();
        for (String effect : tables.sets().getOrDefault("like-effects", Set.of())) {
            List<Compared> parts = compared().stream()
                    .filter(c ->
                            c.averaging() == Averaging.TWA && in(effect, c.agent()) && !in("summed-apart", c.agent()))
                    .toList();
            if (parts.size() > 1) {
                sums.put(
                        effect,
                        parts.stream()
                                .map(c -> c.level().divide(c.limit(), MathContext.DECIMAL128))
                                .reduce(BigDecimal.ZERO, BigDecimal::add));
            }
        }
        return sums;
    }

    /** True when a gas or vapour is above its own limit, or part of a mixture above one. */
    boolean gasAboveLimit() {
        Map<String, BigDecimal> mixtures = mixtures();
        return compared().stream()
                .anyMatch(c -> gas(c.agent())
                        && (c.above(BigDecimal.ONE)
                                || c.averaging() == Averaging.TWA
                                        && mixtures.entrySet().stream()
                                                .anyMatch(m -> m.getValue().compareTo(BigDecimal.ONE) > 0
                                                        && in(m.getKey(), c.agent()))));
    }

    private boolean gas(String agent) {
        return all(Agent.class).stream()
                .anyMatch(a -> a.id().equals(agent) && a.form().equals("gas"));
    }

    /** The factor of a class against what it must hold: that of the evidence when it is at hand; none for mere escape. */
    Optional<BigDecimal> factor(String deviceClass, String holding) {
        if (answer("purpose").filter("escape"::equals).isPresent()) {
            return Optional.empty();
        }
        List<AssignedFactor> rows = all(AssignedFactor.class).stream()
                .filter(f -> f.deviceClass().equals(deviceClass))
                .filter(f -> f.against().equals("any") || f.against().equals(holding))
                .toList();
        Optional<AssignedFactor> proven = rows.stream()
                .filter(f -> answer(f.provided()).filter("true"::equals).isPresent())
                .findFirst();
        return proven.or(() ->
                        rows.stream().filter(f -> f.provided().equals("always")).findFirst())
                .map(AssignedFactor::factor)
                .map(factor -> capped(deviceClass, factor));
    }

    /** 29 CFR 1910.134(f)(6): a taste or smell test serves an unpowered full facepiece up to ten times the limit only. */
    private BigDecimal capped(String deviceClass, BigDecimal factor) {
        boolean unpoweredFull = all(DeviceClass.class).stream()
                .anyMatch(d -> d.id().equals(deviceClass)
                        && d.seal().equals("tight")
                        && d.supply().equals("filter")
                        && d.pressure().equals("negative")
                        && d.covers().equals("face"));
        boolean bySense =
                answer("fit-test-method").filter("qualitative"::equals).isPresent();
        return unpoweredFull && bySense
                ? all(Threshold.class).stream()
                        .filter(t -> t.id().equals("fit-qualitative-full")
                                && t.value().signum() > 0)
                        .map(t -> t.value().min(factor))
                        .findFirst()
                        .orElse(factor)
                : factor;
    }

    boolean immediatelyDangerous() {
        boolean reached = all(Exposure.class).stream().anyMatch(x -> all(DangerLevel.class).stream()
                .anyMatch(d -> d.agent().equals(x.agent()) && in(d.unit(), x).compareTo(d.value()) >= 0));
        return reached || answer("immediately-dangerous").filter("true"::equals).isPresent();
    }

    /** The least that must bar a class from being called suitable; empty when this knows of nothing. */
    Optional<String> barred(DeviceClass device) {
        String holding = gasAboveLimit() ? "combined" : "particles";
        Optional<BigDecimal> factor = factor(device.id(), holding);
        if (factor.isEmpty()) {
            return Optional.of("no factor against " + holding);
        }
        for (Compared compared : compared()) {
            if (compared.above(factor.get())) {
                return Optional.of("factor below " + compared);
            }
        }
        for (Map.Entry<String, BigDecimal> mixture : mixtures().entrySet()) {
            if (mixture.getValue().compareTo(factor.get()) > 0) {
                return Optional.of("factor below mixture " + mixture);
            }
        }
        if (immediatelyDangerous() && !in("for-immediate-danger", device.id())) {
            return Optional.of("immediately dangerous");
        }
        return wearer(device);
    }

    /** Where nothing is required the wearer stops nothing. */
    private boolean calledFor() {
        return compared().stream().anyMatch(c -> c.above(BigDecimal.ONE))
                || mixtures().values().stream().anyMatch(m -> m.compareTo(BigDecimal.ONE) > 0);
    }

    private Optional<String> wearer(DeviceClass device) {
        boolean tight = device.seal().equals("tight");
        if (answer("explosive").filter("false"::equals).isEmpty()) {
            return Optional.of("explosive or not known");
        }
        if (tight && answer("facial-hair").filter("false"::equals).isEmpty()) {
            return Optional.of("facial hair or not known");
        }
        if (tight && answer("fit-tested").filter("true"::equals).isEmpty()) {
            return Optional.of("not fit-tested or not known");
        }
        if (calledFor() && answer("trained").filter("true"::equals).isEmpty()) {
            return Optional.of("not trained or not known");
        }
        if (calledFor()
                && answer("medically-cleared").filter("true"::equals).isEmpty()
                && !(answer("medically-cleared").filter("powered-only"::equals).isPresent()
                        && !device.pressure().equals("negative")
                        && !device.pressure().equals("demand"))) {
            return Optional.of("not cleared or not known");
        }
        if (answer("purpose").filter("fire-fighting"::equals).isPresent() && !in("for-fire", device.id())) {
            return Optional.of("fire");
        }
        return answer("purpose").filter("escape"::equals).map(x -> "escape");
    }
}
