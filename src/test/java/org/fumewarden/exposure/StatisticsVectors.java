package org.fumewarden.exposure;

import static org.fumewarden.exposure.AirVectors.need;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** What the product says to the vectors on tolerance, compliance, means and non-detects. */
final class StatisticsVectors {
    private StatisticsVectors() {}

    static Map<String, Object> tolerance(Vector v) {
        if (v.word("side").equals("lower")) {
            double[] data = v.numbers("data");
            Moments moments = Moments.of(data);
            double k = need(ToleranceFactor.of(data.length, v.number("percentile"), 1 - v.number("confidence")));
            double limit = moments.mean() + k * moments.deviation();
            return Map.of("mean", moments.mean(), "sd", moments.deviation(), "limit", limit, "published", limit);
        }
        if (v.has("data")) {
            LognormalFit fit = v.fit();
            Map<String, Object> found = Map.of(
                    "meanlog",
                    fit.meanLog(),
                    "sdlog",
                    fit.sdLog(),
                    "utl",
                    need(fit.tolerance(v.number("coverage"), v.number("confidence"))));
            Map<String, Object> all = new HashMap<>(found);
            all.put("published", found);
            return all;
        }
        double k = need(ToleranceFactor.of(v.count("n"), v.number("coverage"), v.number("confidence")));
        double approximate = natrella(v.count("n"), v.number("coverage"), v.number("confidence"));
        return Map.of("k", k, "published", k, "k_exact", k, "k_natrella", approximate, "published_approx", approximate);
    }

    /** The closed approximation that tables use; kept here only, to show how far off it is. */
    private static double natrella(int n, double coverage, double confidence) {
        double zp = StandardNormal.quantile(coverage);
        double zg = StandardNormal.quantile(confidence);
        double a = 1 - zg * zg / (2.0 * (n - 1));
        double b = zp * zp - zg * zg / n;
        return (zp + Math.sqrt(zp * zp - a * b)) / a;
    }

    static Map<String, Object> sample(Vector v) {
        if (v.has("limit")) {
            Exceedance found = need(Exceedance.of(v.set(), v.number("limit"), v.number("confidence")));
            return Map.of("fraction", found.share(), "lcl", found.lower(), "ucl", found.upper());
        }
        LognormalFit fit = v.fit();
        return Map.of(
                "n",
                fit.samples(),
                "mean",
                Moments.of(v.numbers("data")).mean(),
                "gm",
                fit.geometricMean(),
                "gsd",
                fit.geometricDeviation(),
                "p95",
                need(fit.percentile(0.95)));
    }

    static Map<String, Object> compliance(Vector v) {
        if (v.has("workers")) {
            return workers(v);
        }
        double limit = v.number("oelv");
        if (!v.has("rule")) {
            return Map.of("decision", Compliance.preliminary(v.set(), limit).decision());
        }
        LognormalFit fit = v.fit();
        Compliance.Tolerance test = need(Compliance.tolerance(fit, limit));
        boolean compliant = Compliance.test(v.set(), limit).decision() == Compliance.Decision.COMPLIANT;
        if (compliant != test.compliant()) {
            throw new AssertionError("The verdict and its numbers disagree.");
        }
        return Map.of(
                "gm",
                fit.geometricMean(),
                "gsd",
                fit.geometricDeviation(),
                "u_r",
                test.distance(),
                "u_t",
                test.required(),
                "compliant",
                compliant,
                "utl95_70",
                test.toleranceLimit());
    }

    private static Map<String, Object> workers(Vector v) {
        List<Sample> samples = new ArrayList<>();
        int name = 0;
        for (JsonNode worker : v.inputs().get("workers")) {
            name++;
            for (double found : Vector.numbers(worker)) {
                samples.add(Sample.found(found).by("worker " + name));
            }
        }
        WorkerVariance variance = need(WorkerVariance.of(need(SampleSet.of(samples))));
        WorkerVariance.Individual individual = need(variance.individual(v.number("oel")));
        Map<String, Object> found = new HashMap<>();
        found.put("mean_log", variance.meanLog());
        found.put("ms_between", variance.meanSquareBetween());
        found.put("ms_within", variance.meanSquareWithin());
        found.put("var_between", variance.between());
        found.put("var_within", variance.within());
        found.put("between_share", variance.betweenShare().orElseThrow());
        found.put("individual_test_needed", variance.individualTestNeeded());
        found.put("h", individual.distance());
        found.put("prob_individual_over", individual.probability());
        return found;
    }

    static Map<String, Object> mean(Vector v) {
        if (v.has("s")) {
            double h = need(LandMean.factor(v.count("n"), v.number("s"), v.number("confidence")));
            return Map.of("h", h, "published", h);
        }
        double one = v.has("one_sided_conf") ? v.number("one_sided_conf") : 1 - (1 - v.number("two_sided_conf")) / 2;
        LognormalFit fit = v.has("meanlog")
                ? new LognormalFit(v.number("meanlog"), v.number("sdlog"), v.count("n"), v.count("n"), "given")
                : v.fit();
        double upper = need(LandMean.upper(fit.evidence(), fit.meanLog(), fit.sdLog(), one));
        return Map.of("ucl", upper, "published", upper, "handbook_table_value", upper);
    }

    static Map<String, Object> censored(Vector v) {
        SampleSet set = v.set();
        if (v.has("limit")) {
            LognormalFit fit = v.fit();
            Exceedance found = need(Exceedance.of(set, v.number("limit"), v.number("confidence")));
            return Map.of(
                    "mu",
                    fit.meanLog(),
                    "sigma",
                    fit.sdLog(),
                    "fraction",
                    found.share(),
                    "lcl",
                    found.lower(),
                    "ucl",
                    found.upper(),
                    "published_lcl",
                    found.lower());
        }
        return switch (v.word("method")) {
            case "ROS" ->
                line(OrderRegression.of(set, v.number("plotting_constant")).line());
            case "robust ROS" ->
                line(OrderRegression.of(set, v.number("plotting_constant")).filled());
            default -> likelihood(v, set);
        };
    }

    private static Map<String, Object> line(Moments m) {
        return Map.of(
                "mu",
                m.mean(),
                "sigma",
                m.deviation(),
                "mean_log",
                m.mean(),
                "sd_log",
                m.deviation(),
                "published",
                List.of(m.mean(), m.deviation()));
    }

    private static Map<String, Object> likelihood(Vector v, SampleSet set) {
        LognormalFit fit = v.fit();
        LognormalFit half = need(LognormalFits.of(set, NonDetects.HALF_LIMIT));
        Map<String, Object> found = new HashMap<>(line(new Moments(set.size(), fit.meanLog(), fit.sdLog())));
        found.put("p95", need(fit.percentile(0.95)));
        found.put("gm_lod2", half.geometricMean());
        found.put("gsd_lod2", half.geometricDeviation());
        return found;
    }
}
