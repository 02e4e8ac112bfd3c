package org.fumewarden.report.upkeep;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.fumewarden.advice.Advice;
import org.fumewarden.advice.Reason;

/**
 * Advice for one task of the site, in sentences that carry their clauses.
 *
 * @param warning why the task is not cleared; empty when the advice is complete
 */
public record TaskAdvice(String title, LocalDate on, Optional<String> warning, List<String> sentences) {
    public TaskAdvice {
        sentences = List.copyOf(sentences);
    }

    /** What the advice orders: the answer, the work to do before any respirator, the filters, what is open, the cautions. */
    public static TaskAdvice of(Advice advice) {
        List<String> sentences = new ArrayList<>();
        advice.stops().forEach(r -> sentences.add(cited(r)));
        advice.register().forEach(n -> sentences.add(n.says() + " [register, " + n.about() + "]"));
        advice.conflicts().forEach(r -> sentences.add(cited(r)));
        advice.questions().forEach(q -> sentences.add("Open: " + q.ask()));
        advice.controlsFirst().forEach(r -> sentences.add(cited(r)));
        advice.requiredFactor().reasons().forEach(r -> sentences.add(cited(r)));
        advice.recommended().ifPresent(r -> {
            String factor = r.factor()
                    .map(f -> ", assigned protection factor " + f.toPlainString())
                    .orElse("");
            sentences.add("Wear: " + r.name() + factor + ", filter: " + r.filter() + ".");
            Stream.concat(r.reasons().stream(), r.conditions().stream()).forEach(c -> sentences.add(cited(c)));
        });
        advice.filters().forEach(r -> sentences.add(cited(r)));
        advice.cautions().forEach(r -> sentences.add(cited(r)));
        return new TaskAdvice(
                advice.title(),
                advice.on(),
                warning(advice),
                sentences.stream().distinct().toList());
    }

    private static Optional<String> warning(Advice advice) {
        return switch (advice.status()) {
            case COMPLETE -> Optional.empty();
            case INCOMPLETE ->
                Optional.of("NOT COMPLETE. Questions are open. Nothing is cleared until they are answered.");
            case CONFLICT -> Optional.of("CONFLICT. Two statements contradict each other. Resolve that first.");
            case DO_NOT_ENTER -> Optional.of("DO NOT ENTER, DO NOT START.");
        };
    }

    /** True when nothing of the task is left open. */
    public boolean settled() {
        return warning.isEmpty();
    }

    private static String cited(Reason reason) {
        return reason.says()
                + (reason.source().equals("practice")
                        ? " [common practice]"
                        : " [" + reason.source() + " " + reason.clause() + "]");
    }
}
