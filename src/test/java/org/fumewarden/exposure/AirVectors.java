package org.fumewarden.exposure;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.fumewarden.model.Reckoning;
import org.fumewarden.model.Soundness;

/** What the product says to the vectors on averages, mixtures, errors, shifts and units. */
final class AirVectors {
    private AirVectors() {}

    static <T> T need(Reckoning<T> outcome) {
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
            Reckoning<Double> result = ShortTerm.fromSample(
                    v.number("mean"), v.number("sample_min"), ShortTerm.QUARTER_HOUR, v.number("limit15"));
            return Map.of(
                    "stel15",
                    result.value(),
                    "exceeded_for_some_window",
                    result.status() == Soundness.INFERRED_EXCEEDANCE,
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

    static Map<String, Object> analytical(Vector v) {
        List<Period> periods = new ArrayList<>();
        for (int i = 0; i < v.list("x").size(); i++) {
            periods.add(new Period(v.list("x").get(i), v.list("minutes").get(i)));
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
}
