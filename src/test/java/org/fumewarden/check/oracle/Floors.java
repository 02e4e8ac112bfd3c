package org.fumewarden.check.oracle;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.fumewarden.advice.Advice;
import org.fumewarden.model.Exposure;

/**
 * Factors and times that a code sets whatever was measured: floors of the British sheets by process, guidance and extraction, the
 * assumed lead of 29 CFR 1926.62(d)(2), wear times. Not known here: silica of 1926.1153 Table 1, supplied air that 1910.252 and
 * 1926.353 order, German emission groups, devices against agents that cause cancer.
 */
record Floors(Case facts, Levels levels) implements Family {

    /** The highest factor that some clause sets, 1 when none does. */
    BigDecimal least() {
        String process = facts.answer("process").orElse("unknown");
        boolean byHand = !facts.is("guided-by", "machine");
        boolean unproven = byHand && !facts.is("extraction", "verified");
        boolean lead = leadUnmeasured();
        return Stream.of(
                        when(true, "floor-always-" + process),
                        when(byHand, "floor-by-hand-" + process),
                        when(unproven && facts.processIn("named-for-welding-fume"), "welding-fume-floor"),
                        when(unproven && facts.processIn("high-emission"), "high-emission-floor"),
                        when(
                                lead
                                        && facts.is("coating", "lead-paint")
                                        && !facts.is("coating-stripped", "true")
                                        && facts.processIn("torch-on-lead-paint"),
                                "assumed-lead-above-fifty"),
                        when(
                                lead && facts.is("base-metal", "lead-base-metal") && facts.processIn("lead-burning"),
                                "assumed-lead-up-to-fifty"))
                .flatMap(Optional::stream)
                .reduce(BigDecimal.ONE, BigDecimal::max);
    }

    private Optional<BigDecimal> when(boolean holds, String threshold) {
        return holds ? facts.number(threshold) : Optional.empty();
    }

    /** 1926.62(d)(2) speaks until the exposure was measured; where the sector is not known the stricter law counts. */
    private boolean leadUnmeasured() {
        return !facts.is("sector", "general-industry", "shipyard")
                && facts.said(Exposure.class).stream().noneMatch(x -> x.agent().equals("lead"));
    }

    @Override
    public List<String> objections(Advice advice) {
        List<String> found = new ArrayList<>();
        BigDecimal floor = least();
        if (floor.compareTo(BigDecimal.ONE) > 0
                && advice.requiredFactor().value().compareTo(floor) < 0) {
            found.add("the factor is " + advice.requiredFactor().value() + ", but a floor is " + floor);
        }
        for (Case.Offered offered : facts.offered(advice)) {
            if (offered.respirator()
                    .factor()
                    .filter(f -> f.compareTo(floor) >= 0)
                    .isEmpty()) {
                found.add(offered.id() + " is offered below a floor of " + floor);
            }
            boolean called = levels.callsForOne() || floor.compareTo(BigDecimal.ONE) > 0;
            if (called && !offered.forImmediateDanger()) {
                tooLong(offered).ifPresent(why -> found.add(offered.id() + " is offered for longer than " + why));
            }
        }
        return found;
    }

    private Optional<String> tooLong(Case.Offered offered) {
        String process = facts.answer("process").orElse("unknown");
        boolean filters = offered.device().filters();
        return Stream.of(
                        over("time-on-task", filters, "filter-minutes-" + process),
                        over(
                                "wear-time",
                                filters && offered.device().pressure().equals("negative"),
                                "unpowered-wear-limit"),
                        over("wear-time", true, "use-" + offered.id()),
                        over("wear-time", !levels.gasesAbove().isEmpty(), "use-combined-" + offered.id()))
                .flatMap(Optional::stream)
                .findFirst();
    }

    /** The threshold that a stated or unknown time does not keep. */
    private Optional<String> over(String time, boolean holds, String threshold) {
        return when(holds, threshold)
                .filter(most ->
                        facts.measure(time).filter(t -> t.compareTo(most) <= 0).isEmpty())
                .map(most -> threshold + ", " + most + " min");
    }
}
