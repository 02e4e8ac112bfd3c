package org.fumewarden.exposure;

import static org.fumewarden.exposure.AirVectors.need;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** What the product says to the vectors on input that must never pass silently. */
final class TrapVectors {
    private TrapVectors() {}

    static Map<String, Object> trap(Vector v) {
        return switch (v.id()) {
            case "trap-mixed-units" -> mixedUnits(v);
            case "trap-dust-in-ppm" ->
                Map.of(
                        "status",
                        new Level(v.number("v"), Level.Unit.PPM)
                                .in(
                                        Level.Unit.MILLIGRAM_PER_CUBIC_METRE,
                                        Level.Form.AEROSOL,
                                        OptionalDouble.of(100),
                                        new MolarVolume(24.45))
                                .status());
            case "trap-stale-oel-zero", "trap-below-oel" -> ratio(v);
            case "trap-np-bound" ->
                Map.of(
                        "p95_below_L",
                        v.count("n") >= need(ToleranceFactor.samplesWithoutDistribution(0.95, v.number("confidence"))));
            default -> samples(v);
        };
    }

    private static Map<String, Object> mixedUnits(Vector v) {
        List<Level> levels = new ArrayList<>();
        for (JsonNode value : v.inputs().get("values")) {
            levels.add(new Level(
                    value.get("v").asDouble(),
                    value.get("unit").asText().equals("ppm") ? Level.Unit.PPM : Level.Unit.MILLIGRAM_PER_CUBIC_METRE));
        }
        return Map.of("status", Level.commonUnit(levels).status());
    }

    private static Map<String, Object> ratio(Vector v) {
        Outcome<Double> ratio = Ratios.of(v.number("conc"), v.number("oel"));
        Map<String, Object> found = new HashMap<>();
        found.put("status", ratio.status());
        found.put("hr", ratio.value().orElse(-1.0));
        found.put("rpe_needed_by_ratio", ratio.value().filter(r -> r > 1).isPresent());
        return found;
    }

    private static Map<String, Object> samples(Vector v) {
        Outcome<LognormalFit> fit = v.samples().then(LognormalFits::of);
        Outcome<Compliance.Tolerance> test = fit.then(f -> Compliance.tolerance(f, v.number("oelv")));
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
