package org.fumewarden.training;

import java.math.BigDecimal;
import java.text.DecimalFormatSymbols;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.fumewarden.model.Answer;
import org.fumewarden.model.Exposure;
import org.fumewarden.model.Input;
import org.fumewarden.model.Judged;
import org.fumewarden.model.Measure;
import org.fumewarden.model.SampleNote;
import org.fumewarden.trail.Premise;

/** What is known of a task, a line each: everything that was answered, nothing that was concluded. What nobody knows is left out. */
final class Facts {
    /** What a foreman asks about any job before anything else; our own choice. */
    private static final Set<String> ASKED_FIRST = Set.of(
            "process",
            "base-metal",
            "coating",
            "place",
            "extraction",
            "wear-time",
            "oxygen",
            "facial-hair",
            "fit-tested");

    private final Told told;

    private Facts(Told told) {
        this.told = told;
    }

    /** Every line. */
    static List<String> all(Told told) {
        return new Facts(told).lines(told.said().inputs());
    }

    /** The lines that a room needs: every level, what anybody would ask, and what some step of the advice rests on. */
    static List<String> of(Told told) {
        Set<String> rested = told.said().trail().steps().stream()
                .flatMap(s -> s.premises().stream())
                .filter(p -> p.kind().equals("input"))
                .map(Premise::address)
                .collect(Collectors.toSet());
        List<String> lines = new ArrayList<>(new Facts(told)
                .lines(told.said().inputs().stream()
                        .filter(i -> question(i).map(ASKED_FIRST::contains).orElse(true) || rested.contains(i.path()))
                        .toList()));
        lines.add(told.say("rest"));
        return lines;
    }

    /** A line for each answer, and one for each substance with all its levels. */
    private List<String> lines(List<Input> inputs) {
        Map<String, String> lines = new LinkedHashMap<>();
        for (Input input : inputs) {
            if (input instanceof Exposure exposure) {
                lines.merge(
                        agent(exposure.agent()),
                        level(exposure),
                        (one, other) -> one.contains(other) ? one : one + "; " + other);
            } else if (!line(input).isEmpty()) {
                lines.put(line(input), "");
            }
        }
        return lines.entrySet().stream()
                .map(l -> l.getValue().isEmpty() ? l.getKey() : l.getKey() + ": " + l.getValue())
                .toList();
    }

    private String level(Exposure exposure) {
        return number(exposure.level()) + " " + exposure.unit().symbol() + " "
                + told.say("averaging." + exposure.averaging().key());
    }

    /** The question that an input answers; none for levels. */
    private static Optional<String> question(Input input) {
        if (input instanceof Answer answer) {
            return Optional.of(answer.question());
        }
        return input instanceof Measure measure ? Optional.of(measure.question()) : Optional.empty();
    }

    private String line(Input input) {
        if (input instanceof Answer answer) {
            return ask(answer.question()) + " " + answer(answer);
        }
        if (input instanceof Measure measure) {
            return ask(measure.question()) + " " + amount(measure);
        }
        if (input instanceof Judged judged) {
            return agent(judged.agent()) + ": " + told.say("judged", judged.because());
        }
        return input instanceof SampleNote note ? agent(note.agent()) + ": " + note.sentence() : "";
    }

    private String answer(Answer answer) {
        if (answer.value().equals("true") || answer.value().equals("false")) {
            return told.say(answer.value());
        }
        String own = told.vocabulary()
                .question(answer.question())
                .map(q -> told.vocabulary().choices(q).getOrDefault(answer.value(), answer.value()))
                .orElse(answer.value());
        return told.words().sayOr("choice." + answer.question() + "." + answer.value(), own);
    }

    private String amount(Measure measure) {
        String plain = number(measure.value().stripTrailingZeros()) + " " + measure.unit();
        boolean hours = measure.unit().equals("min")
                && measure.value().intValue() >= 60
                && measure.value().intValue() % 60 == 0;
        return hours ? measure.value().intValue() / 60 + " h" : plain;
    }

    /** A number with the decimal mark of the language. */
    private String number(BigDecimal value) {
        DecimalFormatSymbols marks = DecimalFormatSymbols.getInstance(
                Locale.forLanguageTag(told.words().language()));
        return value.toPlainString().replace('.', marks.getDecimalSeparator());
    }

    private String ask(String question) {
        String own = told.vocabulary().question(question).map(q -> q.ask()).orElse(question);
        return told.words().sayOr("ask." + question, own);
    }

    private String agent(String id) {
        return told.words().sayOr("agent." + id, told.vocabulary().name(id));
    }
}
