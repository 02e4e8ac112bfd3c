package org.fumewarden.exposure;

import static org.fumewarden.exposure.AirVectors.need;

import java.util.HashMap;
import java.util.Map;
import org.fumewarden.exposure.TwoZoneRoom.Fields;

/** What the product says to the vectors on protection factors and rooms. */
final class ProtectionVectors {
    private ProtectionVectors() {}

    static Map<String, Object> protection(Vector v) {
        if (v.has("gm")) {
            return statistics(v);
        }
        return Map.of("effective_pf", need(Wearing.effectiveFactor(v.number("pf"), v.number("wear_fraction"))));
    }

    private static Map<String, Object> statistics(Vector v) {
        int n = v.count("n");
        double limit = v.number("oel");
        LognormalFit fit = new LognormalFit(Math.log(v.number("gm")), Math.log(v.number("gsd")), n, n, "given");
        return Map.of(
                "hr_gm",
                fit.geometricMean() / limit,
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
            WellMixedRoom room = new WellMixedRoom(v.number("q_per_h"), v.number("ach_h"), v.number("V"), 0, 0);
            double c = need(room.after(v.number("t_min") / 60, 0));
            return Map.of("c", c, "published", c);
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
        Fields now = room.after(v.number("t_min"), Fields.CLEAN);
        Fields mean = room.average(v.number("t_min"), Fields.CLEAN);
        found.put("c_nf", now.near());
        found.put("c_ff", now.far());
        found.put("mean_nf", mean.near());
        found.put("mean_ff", mean.far());
        found.put("lambda1", room.rates()[0]);
        found.put("lambda2", room.rates()[1]);
        return found;
    }
}
