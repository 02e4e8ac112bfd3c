package org.fumewarden.exposure;

import static org.fumewarden.exposure.AirVectors.need;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.fumewarden.exposure.Ratios.Together;
import org.fumewarden.exposure.TwoZoneRoom.Fields;

/** What the product says to the vectors on protection factors and rooms. */
final class ProtectionVectors {
    private ProtectionVectors() {}

    static Map<String, Object> protection(Vector v) {
        if (v.has("gm")) {
            return statistics(v);
        }
        if (v.has("conc")) {
            List<Double> limits = v.list("limit");
            List<Double> each = new ArrayList<>();
            for (int i = 0; i < limits.size(); i++) {
                each.add(need(Ratios.of(v.list("conc").get(i), limits.get(i))));
            }
            return Map.of(
                    "hr_each",
                    each,
                    "hr_sum",
                    need(Ratios.mixture(v.list("conc"), limits, Together.ADDITIVE)),
                    "hr_max",
                    need(Ratios.mixture(v.list("conc"), limits, Together.INDEPENDENT)));
        }
        if (v.has("segments")) {
            List<Wearing.Stretch> stretches = new ArrayList<>();
            for (JsonNode s : v.inputs().get("segments")) {
                stretches.add(new Wearing.Stretch(
                        s.get("conc").asDouble(),
                        s.get("h").asDouble() * 60,
                        s.get("pf").asDouble()));
            }
            double twa = need(Wearing.averageInside(stretches, TimeWeightedAverage.EIGHT_HOURS));
            return Map.of("twa", twa, "complies", need(Ratios.of(twa, v.number("limit"))) <= 1);
        }
        if (v.has("wear_fraction")) {
            return Map.of("effective_pf", need(Wearing.effectiveFactor(v.number("pf"), v.number("wear_fraction"))));
        }
        if (v.has("rule")) {
            // 95th percentile outside over the limit equals the 5th percentile of the factors; limit 1, factors around
            // 1.
            double fifth = need(Wearing.fifthPercentile(1, v.number("wpf_gsd")));
            double mean = fifth * Math.exp(-StandardNormal.quantile(0.95) * Math.log(v.number("gsd_out")));
            Wearing.Inside inside = need(Wearing.inside(mean, v.number("gsd_out"), 1, v.number("wpf_gsd")));
            return Map.of("p_exceed", need(inside.above(1)));
        }
        if (v.has("gm_out")) {
            Wearing.Inside inside = need(
                    Wearing.inside(v.number("gm_out"), v.number("gsd_out"), v.number("wpf_gm"), v.number("wpf_gsd")));
            return Map.of(
                    "gm_in",
                    inside.geometricMean(),
                    "gsd_in",
                    inside.geometricDeviation(),
                    "p_exceed",
                    need(inside.above(v.number("oel"))));
        }
        return Map.of("p5", need(Wearing.fifthPercentile(v.number("wpf_gm"), v.number("wpf_gsd"))));
    }

    private static Map<String, Object> statistics(Vector v) {
        int n = v.count("n");
        double limit = v.number("oel");
        LognormalFit fit = new LognormalFit(Math.log(v.number("gm")), Math.log(v.number("gsd")), n, n, "given");
        return Map.of(
                "hr_gm",
                fit.geometricMean() / limit,
                "hr_mean",
                need(fit.mean()) / limit,
                "hr_p95",
                need(fit.percentile(0.95)) / limit,
                "hr_utl95_70",
                need(fit.tolerance(0.95, 0.7)) / limit,
                "hr_utl95_95",
                need(fit.tolerance(0.95, 0.95)) / limit);
    }

    static Map<String, Object> box(Vector v) {
        if (v.has("beta_m3_min")) {
            return twoZones(v);
        }
        if (v.has("ach_h")) {
            double c = need(WellMixedRoom.of(v.number("q_per_h"), v.number("ach_h"), v.number("V"))
                    .after(v.number("t_min") / 60, 0));
            return Map.of("c", c, "published", c);
        }
        if (v.has("C_target")) {
            return Map.of(
                    "t_min",
                    need(WellMixedRoom.of(0, v.number("Q_m3_min"), v.number("V_m3"))
                            .timeTo(v.number("C_target"), v.number("C0"))));
        }
        if (v.has("G_m3_s")) {
            WellMixedRoom room = WellMixedRoom.of(v.number("G_m3_s"), v.number("Q_m3_s"), v.number("V_m3"));
            double seconds = need(room.timeTo(v.number("target"), 0));
            return Map.of("c_ss", need(room.steady()), "time_s", seconds, "published_h", seconds / 3600);
        }
        WellMixedRoom room = new WellMixedRoom(
                v.number("G_mg_min"), v.number("Q_m3_min"), v.number("V_m3"), v.number("C_in"), v.number("k_dep_min"));
        return Map.of(
                "c_t", need(room.after(v.number("t_min"), v.number("C0"))),
                "mean_0_t", need(room.average(v.number("t_min"), v.number("C0"))));
    }

    private static Map<String, Object> twoZones(Vector v) {
        TwoZoneRoom room = new TwoZoneRoom(
                v.number("G_mg_min"),
                v.number("Q_m3_min"),
                v.number("beta_m3_min"),
                v.number("V_NF"),
                v.number("V_FF"));
        Map<String, Object> found = new HashMap<>();
        if (v.has("cycle_min")) {
            TwoZoneRoom.Cycled cycled =
                    room.cycled(v.number("arc_on_min"), v.number("cycle_min"), v.number("total_min"), Fields.CLEAN);
            found.put("c_nf_end", cycled.end().near());
            found.put("c_ff_end", cycled.end().far());
            found.put("mean_nf", cycled.average().near());
            found.put("mean_ff", cycled.average().far());
            return found;
        }
        Fields now = room.after(v.number("t_min"), Fields.CLEAN);
        Fields mean = room.average(v.number("t_min"), Fields.CLEAN);
        Fields steady = need(room.steady());
        found.put("c_nf", now.near());
        found.put("c_ff", now.far());
        found.put("mean_nf", mean.near());
        found.put("mean_ff", mean.far());
        found.put("ss_nf", steady.near());
        found.put("ss_ff", steady.far());
        found.put("lambda1", room.rates()[0]);
        found.put("lambda2", room.rates()[1]);
        return found;
    }
}
