package org.fumewarden.check.oracle;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.fumewarden.advice.Advice;
import org.fumewarden.advice.Status;
import org.fumewarden.model.Band;
import org.fumewarden.model.Condition;
import org.fumewarden.model.DangerLevel;
import org.fumewarden.model.Exposure;
import org.fumewarden.model.Judged;

/**
 * Oxygen, danger levels, confined spaces, explosive air, chlorinated vapour and vessels. Not known here: raised pressure, fire
 * fighting beyond its two classes, rescue, inerting, what a judgement of danger-excluded lifts (nothing, as far as this goes).
 */
record Gates(Case facts, Levels levels) implements Family {
    /** 29 CFR 1910.134(b); EIGA Doc 44/18. */
    private static final BigDecimal ENTRY = new BigDecimal("19.5");

    /** Common practice, no source: a whole point below ordinary air is no longer the instrument. */
    private static final BigDecimal ORDINARY = new BigDecimal("19.9");

    /** 29 CFR 1915.12. */
    private static final BigDecimal ENRICHED = new BigDecimal("22.0");

    @Override
    public List<String> objections(Advice advice) {
        List<String> found = new ArrayList<>();
        List<Case.Offered> offered = facts.offered(advice);
        if (stopsWork().isPresent()) {
            offered.forEach(o ->
                    found.add(o.id() + " is offered in spite of " + stopsWork().get()));
            if (advice.status() == Status.COMPLETE) {
                found.add("complete in spite of " + stopsWork().get());
            }
        }
        entryStop().ifPresent(why -> {
            Set<String> behind = advice.trail().all(Condition.class).stream()
                    .filter(c -> c.topic().equals("entry-only"))
                    .map(Condition::deviceClass)
                    .collect(Collectors.toSet());
            offered.stream()
                    .filter(o -> !o.forImmediateDanger() && !onlyProvenOxygen() || !behind.contains(o.id()))
                    .forEach(o -> found.add(o.id() + " is offered behind an entry stop: " + why));
            if (advice.status() != Status.DO_NOT_ENTER) {
                found.add(advice.status().key() + " in spite of " + why);
            }
        });
        noFilter().ifPresent(why -> offered.stream()
                .filter(o -> o.device().filters())
                .forEach(o -> found.add(o.id() + " filters in spite of " + why)));
        open().filter(why -> advice.status() == Status.COMPLETE).ifPresent(why -> found.add("complete without " + why));
        return found;
    }

    private Optional<BigDecimal> oxygen() {
        return facts.measure("oxygen");
    }

    private boolean oxygenBelow(BigDecimal percent) {
        return oxygen().filter(o -> o.compareTo(percent) < 0).isPresent();
    }

    /**
     * 29 CFR 1910.134(d)(2)(iii) and Table II: on the employer's proof any respirator that supplies the air, behind the same
     * entry stop. Common practice, no source: no proof holds in a confined space or beside a gas that pushes out the oxygen.
     */
    private boolean provenByAltitude() {
        Optional<BigDecimal> altitude = facts.measure("altitude");
        boolean pushedOut = facts.said(Exposure.class).stream()
                .anyMatch(x ->
                        facts.in("displaces-oxygen", x.agent()) && x.level().signum() > 0);
        return facts.is("oxygen-demonstrated", "true")
                && !facts.is("place", "confined-space")
                && !pushedOut
                && facts.tables().all(Band.class).stream()
                        .filter(b -> b.band().equals("oxygen-by-altitude"))
                        .anyMatch(b -> altitude.filter(b::holds).isPresent() && !oxygenBelow(b.value()));
    }

    /** What stops the work, so that no respirator is offered at all. */
    Optional<String> stopsWork() {
        if (facts.answer("explosive").filter("false"::equals).isEmpty()) {
            return Optional.of("explosive air, or nobody knows");
        }
        if (!oxygenBelow(ENTRY) && oxygenBelow(ORDINARY)) {
            return Optional.of("oxygen of " + oxygen().get());
        }
        if (oxygen().filter(o -> o.compareTo(ENRICHED) > 0).isPresent()) {
            return Optional.of("oxygen of " + oxygen().get());
        }
        return chlorinated().or(this::vessel);
    }

    /** 29 CFR 1910.252(c) and 1926.353: chlorinated vapour is kept away from arc and flame, which make phosgene of it. */
    private Optional<String> chlorinated() {
        boolean measured = facts.said(Exposure.class).stream()
                .anyMatch(x -> x.level().signum() > 0
                        && !x.statistic().equals(Exposure.NOT_DETECTED)
                        && (facts.in("chlorinated-solvents", x.agent())
                                || x.agent().equals("phosgene")));
        boolean judged = facts.said(Judged.class).stream()
                .map(Judged::agent)
                .filter(agent -> facts.in("chlorinated-solvents", agent) || agent.equals("phosgene"))
                .anyMatch(agent -> facts.said(Exposure.class).stream()
                        .noneMatch(x -> x.agent().equals(agent)));
        return facts.processIn("arc-flame-or-laser") && (measured || judged || facts.is("degreaser-in-sight", "true"))
                ? Optional.of("chlorinated vapour at the arc")
                : Optional.empty();
    }

    /** 29 CFR 1910.252(a)(3)(i): no hot work on a used container before it is cleaned. */
    private Optional<String> vessel() {
        return facts.processIn("hot-work")
                        && facts.is("vessel", "inside", "on-it")
                        && facts.is("vessel-held", "flammable", "other")
                        && facts.is("vessel-cleaned", "false")
                        && !facts.is("vessel-water-filled", "true")
                ? Optional.of("a container that is not clean")
                : Optional.empty();
    }

    /** What only positive pressure with air of its own may be worn for. */
    Optional<String> entryStop() {
        return oxygenBelow(ENTRY) ? Optional.of("oxygen of " + oxygen().get()) : danger();
    }

    /** The only entry stop behind which the law takes more than air with an escape of its own. */
    private boolean onlyProvenOxygen() {
        return provenByAltitude() && danger().isEmpty();
    }

    private Optional<String> danger() {
        Optional<String> level = facts.said(Exposure.class).stream()
                .filter(x -> facts.tables().all(DangerLevel.class).stream()
                        .anyMatch(d -> d.agent().equals(x.agent())
                                && facts.in(d.unit(), x).compareTo(d.value()) >= 0))
                .map(x -> "danger level of " + x.agent())
                .findFirst();
        return level.or(() -> facts.answer("immediately-dangerous")
                .filter("true"::equals)
                .map(x -> "air called immediately dangerous"));
    }

    /**
     * What no filter is for: too little oxygen (42 CFR 84, EN 12941); a confined space whose oxygen or ventilation is not shown
     * (29 CFR 1926.353(b)(2), 1910.252(c)(4)(ii), DGUV Regel 112-190 3.1.4).
     */
    private Optional<String> noFilter() {
        if (oxygenBelow(ENTRY)) {
            return Optional.of("oxygen of " + oxygen().get());
        }
        if (facts.is("place", "confined-space")) {
            if (oxygen().isEmpty()) {
                return Optional.of("a confined space without a test of oxygen");
            }
            if (!facts.is("ventilation", "mechanical-adequate")) {
                return Optional.of("a confined space without adequate ventilation");
            }
        }
        return Optional.empty();
    }

    /** What nobody may leave open. */
    private Optional<String> open() {
        for (String question : List.of("process", "base-metal", "coating", "filler", "place", "purpose")) {
            if (facts.answer(question).isEmpty()) {
                return Optional.of("an answer to " + question);
            }
        }
        if (facts.is("place", "confined-space") && oxygen().isEmpty()) {
            return Optional.of("oxygen in a confined space");
        }
        if (facts.is("vessel", "inside", "on-it") && facts.answer("vessel-held").isEmpty()) {
            return Optional.of("what the container held");
        }
        return facts.said(Exposure.class).stream()
                .filter(this::farAbove)
                .map(Exposure::agent)
                .findFirst();
    }

    /** Common practice, no source: a gas above ten times its limit without a published danger level is not called harmless. */
    private boolean farAbove(Exposure exposure) {
        return facts.gas(exposure.agent())
                && facts.tables().all(DangerLevel.class).stream()
                        .noneMatch(d -> d.agent().equals(exposure.agent()))
                && levels.compared().stream()
                        .anyMatch(c -> c.agent().equals(exposure.agent()) && c.above(BigDecimal.TEN))
                && !facts.is("danger-excluded", "true");
    }
}
