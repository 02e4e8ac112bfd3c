package org.fumewarden.check.oracle;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.fumewarden.advice.Advice;
import org.fumewarden.advice.Respirator;
import org.fumewarden.model.AssignedFactor;
import org.fumewarden.model.DeviceClass;
import org.fumewarden.model.Holding;
import org.fumewarden.model.Need;

/**
 * The factor of each class against what it must hold, and no class offered below what the levels ask for. Not known here: when
 * a gas must be held although it is within its limit; there the advice decides, since it can only ask for more.
 */
record Factors(Case facts, Levels levels) implements Family {

    @Override
    public List<String> objections(Advice advice) {
        List<String> found = new ArrayList<>();
        List<String> holdings =
                advice.trail().all(Holding.class).stream().map(Holding::kind).toList();
        String holding = holdings.contains("combined") ? "combined" : "particles";
        if (holdings.size() != 1 || !levels.gasesAbove().isEmpty() && !holding.equals("combined")) {
            found.add("gases above their limits " + levels.gasesAbove() + ", but to be held are " + holdings);
        }
        for (Respirator respirator : advice.respirators()) {
            Optional<BigDecimal> expected = factor(respirator.deviceClass(), holding);
            if (!expected.map(BigDecimal::stripTrailingZeros)
                    .equals(respirator.factor().map(BigDecimal::stripTrailingZeros))) {
                found.add(respirator.deviceClass() + " has factor " + respirator.factor() + ", not " + expected);
            }
        }
        facts.offered(advice).forEach(o -> tooLow(o, holding, advice).ifPresent(why -> found.add(o.id() + " " + why)));
        return found;
    }

    private Optional<String> tooLow(Case.Offered offered, String holding, Advice advice) {
        Optional<BigDecimal> factor = factor(offered.id(), holding);
        if (factor.isEmpty()) {
            return Optional.of("is offered without a factor against " + holding);
        }
        for (Levels.Compared compared : levels.compared()) {
            if (compared.above(factor.get())) {
                return Optional.of("is offered below " + compared);
            }
        }
        for (Map.Entry<String, BigDecimal> mixture : levels.mixtures().entrySet()) {
            if (mixture.getValue().compareTo(factor.get()) > 0) {
                return Optional.of("is offered below the mixture " + mixture);
            }
        }
        return advice.trail().all(Need.class).stream()
                        .filter(n -> n.ofEveryClass() || filters(offered.id()))
                        .allMatch(n -> n.heldBy(factor.get()))
                ? Optional.empty()
                : Optional.of("is offered below what the advice asks for");
    }

    private boolean filters(String deviceClass) {
        return facts.tables().all(DeviceClass.class).stream()
                .anyMatch(d -> d.id().equals(deviceClass) && d.supply().equals("filter"));
    }

    /** That of the evidence when it is at hand; none for mere escape. */
    private Optional<BigDecimal> factor(String deviceClass, String holding) {
        if (facts.is("purpose", "escape")) {
            return Optional.empty();
        }
        List<AssignedFactor> rows = facts.tables().all(AssignedFactor.class).stream()
                .filter(f -> f.deviceClass().equals(deviceClass))
                .filter(f -> f.against().equals("any") || f.against().equals(holding))
                .toList();
        return rows.stream()
                .filter(f -> facts.is(f.provided(), "true"))
                .findFirst()
                .or(() ->
                        rows.stream().filter(f -> f.provided().equals("always")).findFirst())
                .map(AssignedFactor::factor)
                .map(factor -> capped(deviceClass, factor));
    }

    /** 29 CFR 1910.134(f)(6): a taste or smell test serves an unpowered full facepiece up to ten times the limit only. */
    private BigDecimal capped(String deviceClass, BigDecimal factor) {
        boolean unpoweredFull = facts.tables().all(DeviceClass.class).stream()
                .anyMatch(d -> d.id().equals(deviceClass)
                        && d.seal().equals("tight")
                        && d.supply().equals("filter")
                        && d.pressure().equals("negative")
                        && d.covers().equals("face"));
        Optional<BigDecimal> cap = facts.number("fit-qualitative-full").filter(c -> c.signum() > 0);
        return unpoweredFull && facts.is("fit-test-method", "qualitative")
                ? cap.map(factor::min).orElse(factor)
                : factor;
    }
}
