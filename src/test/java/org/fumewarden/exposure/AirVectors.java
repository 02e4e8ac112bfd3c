package org.fumewarden.exposure;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.fumewarden.exposure.Ratios.Together;

/** What the product says to the vectors on averages, mixtures, errors, shifts and units. */
final class AirVectors {
    private AirVectors() {}

    static <T> T need(Outcome<T> outcome) {
        return outcome.value().orElseThrow(() -> new AssertionError(outcome.status() + ": " + outcome.sentence()));
    }

    static Map<String, Object> average(Vector v) {
        double twa = need(TimeWeightedAverage.of(v.periods("segments_conc_hours", 60), v.number("reference_h") * 60));
        Map<String, Object> found = new HashMap<>(Map.of("twa", twa, "published", twa));
        if (v.has("limit")) {
            found.put("complies", need(Ratios.of(twa, v.number("limit"))) <= 1);
        }
        return found;
    }

    static Map<String, Object> shortTerm(Vector v) {
        if (v.has("sample_min")) {
            Outcome<Double> result = ShortTerm.fromSample(
                    v.number("mean"), v.number("sample_min"), ShortTerm.QUARTER_HOUR, v.number("limit15"));
            return Map.of(
                    "stel15",
                    result.value(),
                    "exceeded_for_some_window",
                    result.status() == Status.INFERRED_EXCEEDANCE,
                    "status",
                    result.status());
        }
        if (v.has("segments_conc_minutes")) {
            return Map.of(
                    "stel15", need(ShortTerm.highest(v.periods("segments_conc_minutes", 1), v.number("window_min"))));
        }
        double[] minutes = v.numbers("minute_series");
        List<Period> periods = new ArrayList<>();
        double blocks = 0;
        double block = 0;
        for (int i = 0; i < minutes.length; i++) {
            periods.add(new Period(minutes[i], 1));
            block += minutes[i] / 15;
            if (i % 15 == 14) {
                blocks = Math.max(blocks, block);
                block = 0;
            }
        }
        return Map.of(
                "rolling_max15",
                need(ShortTerm.highest(periods, v.number("window_min"))),
                // The naive figure, computed here to show by how much clock blocks understate.
                "fixed_block_max15",
                blocks);
    }

    static Map<String, Object> ceiling(Vector v) {
        Ceiling.Peak peak = new Ceiling.Peak(v.number("ceiling"), v.number("peak"), v.number("peak_max_min"));
        return Map.of(
                "peak_rule_ok",
                peak.allows(
                        List.of(new Period(v.number("conc"), v.number("minutes_above_ceiling")), new Period(5, 60))));
    }

    static Map<String, Object> mixture(Vector v) {
        List<Double> limits = v.list("limit");
        double em = need(Ratios.mixture(v.list("conc"), limits, Together.ADDITIVE));
        double largest = need(Ratios.mixture(v.list("conc"), limits, Together.INDEPENDENT));
        return Map.of("em", em, "complies", em <= 1 && largest <= 1, "each_complies", largest <= 1);
    }

    static Map<String, Object> analytical(Vector v) {
        if (v.has("gsd_environment")) {
            return Map.of(
                    "gsd_total", need(AnalyticalError.widened(v.number("gsd_environment"), v.number("cv_analytical"))));
        }
        if (v.has("mass_mg")) {
            List<Double> mass = v.list("mass_mg");
            List<Double> found = new ArrayList<>();
            for (int i = 0; i < mass.size(); i++) {
                found.add(need(AnalyticalError.concentration(
                        mass.get(i),
                        v.list("flow_l_min").get(i),
                        v.list("minutes").get(i))));
            }
            return Map.of("conc_mg_m3", found);
        }
        List<Period> periods = new ArrayList<>();
        for (int i = 0; i < v.list("x").size(); i++) {
            periods.add(new Period(v.list("x").get(i), v.list("minutes").get(i)));
        }
        if (v.has("rel_std_unc")) {
            return Map.of("u_twa", need(AnalyticalError.ofAverage(periods, v.list("rel_std_unc"))));
        }
        AnalyticalError.Band exact = need(AnalyticalError.consecutive(periods, v.number("pel"), v.number("sae")));
        double twa = need(TimeWeightedAverage.of(periods, 450));
        AnalyticalError.Band simple = need(AnalyticalError.single(twa, v.number("pel"), v.number("sae")));
        return Map.of(
                "twa",
                twa,
                "y",
                exact.ratio(),
                "lcl_simple",
                simple.lower(),
                "lcl_exact",
                exact.lower(),
                "classification",
                exact.finding());
    }

    static Map<String, Object> shift(Vector v) {
        if (v.has("hours_day")) {
            return Map.of(
                    "daily",
                    need(ShiftAdjustment.daily(v.number("hours_day"))),
                    "weekly",
                    need(ShiftAdjustment.weekly(v.number("hours_week"))),
                    "used",
                    need(ShiftAdjustment.stricter(v.number("hours_day"), v.number("hours_week"))));
        }
        double h = v.number("hours");
        return switch (v.word("rule")) {
            case "lead" -> Map.of("limit_ug_m3", need(ShiftAdjustment.equalDose(50, h)));
            case "equal-dose-daily" -> Map.of("rf", need(ShiftAdjustment.equalDose(1, h)));
            case "brief-scala-weekly" -> Map.of("rf", need(ShiftAdjustment.weekly(h)));
            // The raw factor of a short shift is shown only to be refused.
            default -> Map.of("rf", need(ShiftAdjustment.daily(h)), "rf_raw", 8 / h * (24 - h) / 16);
        };
    }

    static Map<String, Object> ppm(Vector v) {
        if (v.has("vm_a")) {
            double a = new MolarVolume(v.number("vm_a")).milligramsFromPpm(v.number("ppm"), v.number("mw"));
            double b = new MolarVolume(v.number("vm_b")).milligramsFromPpm(v.number("ppm"), v.number("mw"));
            return Map.of("a", a, "b", b, "ratio", a / b);
        }
        MolarVolume basis = v.has("vm")
                ? new MolarVolume(v.number("vm"))
                : need(MolarVolume.at(
                        v.number("temp_c"),
                        v.has("pressure_kpa") ? v.number("pressure_kpa") : v.number("pressure_mmhg") * 101.325 / 760));
        if (!v.has("ppm")) {
            return Map.of("vm_l_mol", basis.litresPerMole(), "published", basis.litresPerMole());
        }
        double milligrams = need(new Level(v.number("ppm"), Level.Unit.PPM)
                        .in(
                                Level.Unit.MILLIGRAM_PER_CUBIC_METRE,
                                Level.Form.GAS_OR_VAPOUR,
                                OptionalDouble.of(v.number("mw")),
                                basis))
                .amount();
        return Map.of("mg_m3", milligrams, "published", milligrams, "none", Optional.empty());
    }
}
