package org.fumewarden.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.fumewarden.advice.Advice;
import org.fumewarden.advice.Respirator;
import org.fumewarden.exposure.Wearing;
import org.fumewarden.model.Measure;
import org.fumewarden.model.Reckoning;

/** What is left of the recommended factor when the respirator is off for part of the exposed time. */
final class WearSection {
    private static final List<Double> SHARES = List.of(1.0, 0.99, 0.95, 0.9);

    private WearSection() {}

    static void write(Page page, Advice advice) {
        page.head("What is left of the factor when the respirator is off for a time");
        Optional<Respirator> worn = advice.recommended().filter(r -> r.factor().isPresent());
        if (worn.isEmpty()) {
            page.paragraph("No class is recommended yet, so there is no factor to calculate with.");
            return;
        }
        double factor = worn.get().factor().orElseThrow().doubleValue();
        double required = advice.requiredFactor().value().doubleValue();
        page.paragraph(worn.get().name() + ": assigned protection factor " + Page.number(factor) + ". The air needs "
                + Page.number(required) + (advice.requiredFactor().open() ? " so far." : "."));
        for (double share : shares(advice)) {
            Reckoning<Double> left = Wearing.effectiveFactor(factor, share);
            page.paragraph("- Worn for " + Page.percent(share) + " of the exposed time: "
                    + left.value()
                            .map(v -> Page.atMost(v) + (v < required ? ", below what the air needs" : ""))
                            .orElse(left.sentence()));
        }
        page.paragraph("This shows what breaks cost. Never take a respirator off in bad air.");
    }

    /** The usual shares, and wear time over time on task when the one is shorter. */
    private static List<Double> shares(Advice advice) {
        List<Double> shares = new ArrayList<>(SHARES);
        OptionalDouble worn = amount(advice, "wear-time");
        OptionalDouble task = amount(advice, "time-on-task");
        if (worn.isPresent() && task.isPresent() && worn.getAsDouble() < task.getAsDouble()) {
            double share = worn.getAsDouble() / task.getAsDouble();
            if (!shares.contains(share)) {
                shares.add(share);
            }
        }
        return shares;
    }

    /** A measured answer in its canonical unit. */
    static OptionalDouble amount(Advice advice, String question) {
        return advice.inputs().stream()
                .filter(i -> i instanceof Measure m && m.question().equals(question))
                .mapToDouble(i -> ((Measure) i).value().doubleValue())
                .findFirst();
    }
}
