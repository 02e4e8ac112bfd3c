package org.fumewarden.report.answer;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.fumewarden.advice.Advice;
import org.fumewarden.model.Need;
import org.fumewarden.model.NoLimit;
import org.fumewarden.model.Ratio;
import org.fumewarden.report.sheet.Line;
import org.fumewarden.report.sheet.Part;
import org.fumewarden.report.sheet.Sign;
import org.fumewarden.trail.Step;

/** What is in the air: each level against its limit, the highest hazard ratio first. */
record AirPart(Advice advice, Spoken spoken) {
    private static final BigDecimal TENTH = new BigDecimal("0.1");

    Optional<Part> write() {
        List<Ratio> ratios = ratios();
        List<Ratio> small = ratios.stream().filter(r -> !r.reaches(TENTH)).toList();
        List<List<String>> rows = new ArrayList<>();
        floors().forEach(rows::add);
        ratios.stream().filter(r -> r.reaches(TENTH)).map(this::row).forEach(rows::add);
        List<Line> lines = new ArrayList<>();
        if (!rows.isEmpty()) {
            List<String> heads = List.of("agent", "averaging", "exposure", "limit", "ratio", "known").stream()
                    .map(h -> spoken.say("air." + h))
                    .toList();
            lines.add(new Line.Table(heads, rows, List.of(2, 3, 4)));
        }
        if (!small.isEmpty()) {
            lines.add(new Line.Says(
                    Sign.NONE,
                    spoken.say(
                            "air.small",
                            small.stream()
                                    .map(r -> spoken.agent(r.agent()))
                                    .distinct()
                                    .collect(Collectors.joining("; ")))));
        }
        String without = advice.trail().all(NoLimit.class).stream()
                .map(n -> spoken.agent(n.agent()))
                .distinct()
                .collect(Collectors.joining("; "));
        if (!without.isEmpty()) {
            lines.add(new Line.Says(Sign.NONE, spoken.say("air.no-limit", without)));
        }
        return lines.isEmpty() ? Optional.empty() : Optional.of(new Part("air", spoken.say("page.air"), lines));
    }

    /** The highest ratio of each agent and averaging time. */
    private List<Ratio> ratios() {
        Comparator<Ratio> lowest =
                (a, b) -> a.level().multiply(b.limit()).compareTo(b.level().multiply(a.limit()));
        Map<String, Ratio> highest = new LinkedHashMap<>();
        advice.trail()
                .all(Ratio.class)
                .forEach(r -> highest.merge(
                        r.agent() + "/" + r.averaging().key(), r, (a, b) -> lowest.compare(a, b) >= 0 ? a : b));
        return highest.values().stream()
                .sorted(lowest.reversed().thenComparing(Ratio::agent).thenComparing(Ratio::averaging))
                .toList();
    }

    /** Least factors that hold whatever was measured, and sums of like effect. */
    private List<List<String>> floors() {
        return advice.trail()
                .concluding(Need.class)
                .filter(s -> !((Need) s.conclusion()).basis().equals("ratio"))
                .map(s -> floor(s, (Need) s.conclusion()))
                .distinct()
                .toList();
    }

    private List<String> floor(Step step, Need need) {
        return List.of(
                Spoken.sentenceCase(spoken.agent(need.subject())),
                "",
                "",
                "",
                Spoken.figure(need.value()),
                spoken.say("air.basis." + need.basis()) + (step.confidence().unverified() ? Spoken.UNVERIFIED : ""));
    }

    private List<String> row(Ratio ratio) {
        boolean unverified = advice.trail()
                .concluding(Ratio.class)
                .anyMatch(s -> s.conclusion() == ratio && s.confidence().unverified());
        return List.of(
                Spoken.sentenceCase(spoken.agent(ratio.agent())),
                spoken.say("open." + ratio.averaging().key()),
                Spoken.level(ratio.level()) + " " + ratio.unit().symbol(),
                Spoken.level(ratio.limit()) + (unverified ? Spoken.UNVERIFIED : ""),
                Spoken.figure(ratio.level().divide(ratio.limit(), java.math.MathContext.DECIMAL64)),
                spoken.say("air.basis." + ratio.basis()));
    }
}
