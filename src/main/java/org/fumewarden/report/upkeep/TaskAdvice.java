package org.fumewarden.report.upkeep;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.fumewarden.advice.Advice;
import org.fumewarden.advice.Reason;
import org.fumewarden.report.html.Speech;

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
    public static TaskAdvice of(Advice advice, Speech speech) {
        List<String> sentences = new ArrayList<>();
        advice.stops().forEach(r -> sentences.add(cited(r, speech)));
        advice.register()
                .forEach(n ->
                        sentences.add(speech.told(n.says()) + " [" + speech.say("register") + ", " + n.about() + "]"));
        advice.conflicts().forEach(r -> sentences.add(cited(r, speech)));
        advice.questions()
                .forEach(q ->
                        sentences.add(speech.told("Open: " + speech.words().sayOr("ask." + q.question(), q.ask()))));
        advice.controlsFirst().forEach(r -> sentences.add(cited(r, speech)));
        (advice.byChoice().isEmpty() ? advice.requiredFactor().reasons() : advice.byChoice())
                .forEach(r -> sentences.add(cited(r, speech)));
        advice.recommended().ifPresent(r -> {
            String factor = r.factor()
                    .map(f -> ", assigned protection factor " + f.toPlainString())
                    .orElse("");
            sentences.add(speech.told("Wear: " + r.name() + factor + ", filter: " + r.filter() + "."));
            Stream.concat(r.reasons().stream(), r.conditions().stream()).forEach(c -> sentences.add(cited(c, speech)));
        });
        advice.filters().forEach(r -> sentences.add(cited(r, speech)));
        advice.cautions().forEach(r -> sentences.add(cited(r, speech)));
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

    private static String cited(Reason reason, Speech speech) {
        return speech.told(reason.says())
                + (reason.source().equals("practice") || reason.source().equals("fumewarden")
                        ? " ["
                                + speech.say(
                                        reason.source().equals("practice") ? "common practice" : "our own definition")
                                + "]"
                        : " [" + reason.source().toUpperCase(Locale.ROOT) + ", " + speech.cited(reason.clause()) + "]");
    }
}
