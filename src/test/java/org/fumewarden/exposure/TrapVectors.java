package org.fumewarden.exposure;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.fumewarden.model.Reckoning;

/** What the product says to the vectors on input that must never pass silently. */
final class TrapVectors {
    private TrapVectors() {}

    static Map<String, Object> trap(Vector v) {
        return switch (v.id()) {
            case "trap-stale-oel-zero", "trap-below-oel" -> ratio(v);
            default -> samples(v);
        };
    }

    private static Map<String, Object> ratio(Vector v) {
        Reckoning<Double> ratio = Ratios.of(v.number("conc"), v.number("oel"));
        Map<String, Object> found = new HashMap<>();
        found.put("status", ratio.status());
        found.put("hr", ratio.value().orElse(-1.0));
        found.put("rpe_needed_by_ratio", ratio.value().filter(r -> r > 1).isPresent());
        return found;
    }

    private static Map<String, Object> samples(Vector v) {
        Reckoning<LognormalFit> fit = v.samples().then(LognormalFits::of);
        Reckoning<Compliance.Tolerance> test = fit.then(f -> Compliance.tolerance(f, v.number("oelv")));
        Map<String, Object> found = new HashMap<>();
        found.put("status", fit.status());
        found.put("gm", fit.value().map(LognormalFit::geometricMean));
        fit.value()
                .ifPresentOrElse(
                        f -> found.put("gsd", f.geometricDeviation()), () -> found.put("gsd", Optional.empty()));
        found.put("u_r", test.value().map(Compliance.Tolerance::distance));
        found.put("compliant", test.value().map(Compliance.Tolerance::compliant));
        found.put(
                "upper_bound_each", v.samples().value().map(SampleSet::highest).orElse(-1.0));
        v.samples().value().ifPresent(set -> {
            if (Compliance.test(set, v.number("oelv")).decision() == Compliance.Decision.COMPLIANT) {
                throw new AssertionError(v.id() + " passed");
            }
        });
        return found;
    }
}
