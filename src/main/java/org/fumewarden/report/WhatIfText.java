package org.fumewarden.report;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import org.apache.commons.lang3.StringUtils;
import org.fumewarden.advice.Advice;
import org.fumewarden.advice.OpenQuestion;
import org.fumewarden.advice.Reason;
import org.fumewarden.advice.Respirator;
import org.fumewarden.codes.Document;
import org.fumewarden.model.Citation;
import org.fumewarden.model.DangerLevel;
import org.fumewarden.model.Figures;
import org.fumewarden.model.Row;
import org.fumewarden.report.html.Glued;
import org.fumewarden.report.html.Speech;
import org.fumewarden.trail.Premise;
import org.fumewarden.trail.Step;
import org.fumewarden.whatif.AnswerValue;
import org.fumewarden.whatif.Derivation;
import org.fumewarden.whatif.Sweep;

/** What-if results as plain text, in the language of a speech. */
public final class WhatIfText {
    private static final int WIDTH = 90;

    private final Speech speech;

    public WhatIfText(Speech speech) {
        this.speech = speech;
    }

    /** A phrase with its places filled. */
    public String say(String english, Object... parts) {
        return speech.say(english, parts);
    }

    /** A figure, a sentence or a name that another part of the program wrote. */
    public String told(String english) {
        return speech.told(english);
    }

    /** A state or verdict as people say it; anything else as it stands. */
    public String shown(String value) {
        return told(
                switch (value) {
                    case "complete" -> "answered";
                    case "incomplete" -> "not settled";
                    case "do-not-enter" -> "stop";
                    case "barred" -> "ruled out";
                    default -> value;
                });
    }

    /** A text behind its lead, broken between words; what follows stands further in. */
    public static String line(String lead, String text) {
        String rest = " ".repeat(lead.isEmpty() ? 4 : lead.length() + 2);
        return lead + Glued.wrapped(text, WIDTH - rest.length(), "\n" + rest) + "\n";
    }

    /** Sources without a document; their clause says what they are. */
    private static final Set<String> OWN = Set.of("practice", "fumewarden");

    /** A sentence with its rule and clause. */
    public String reason(Reason reason) {
        return told(reason.says()) + " [" + reason.rule() + ": " + place(reason.source(), " ", reason.clause()) + "]";
    }

    /** The tree of a derivation. */
    public String tree(Derivation derivation, Step step) {
        StringBuilder all = new StringBuilder();
        for (Derivation.Line line : derivation.tree(step)) {
            StringBuilder out = new StringBuilder();
            if (line.step() != null) {
                Step s = line.step();
                out.append(s.id()).append(' ').append(told(s.says()));
                out.append(" [")
                        .append(s.rule())
                        .append(": ")
                        .append(cited(s.citation()))
                        .append(']');
                s.overriddenBy().ifPresent(rule -> out.append(' ').append(say("lifted by {0}", rule)));
            } else {
                premise(out, line.premise());
            }
            all.append(line(StringUtils.repeat("  ", line.depth()), out.toString()));
        }
        return all.toString();
    }

    private void premise(StringBuilder out, Premise premise) {
        out.append(say(premise.kind().equals("row") ? "table" : "given")).append(' ');
        out.append(premise.address()).append(" (").append(told(premise.words())).append(')');
        premise.citation().ifPresent(c -> out.append(place(c)));
    }

    private String place(Citation cited) {
        String confidence = cited.confidence().key();
        return " [" + cited(cited)
                + (cited.edition().isEmpty() ? "" : ", " + speech.cited(cited.edition()))
                + (cited.isOfOrganisation() ? "" : ", " + speech.named("confidence." + confidence, confidence))
                + "]";
    }

    private String cited(Citation cited) {
        return place(cited.source(), cited.isOfOrganisation() ? ", " : " ", cited.clause());
    }

    /** A clause behind its document, which is named once: many clauses begin with it. */
    private String place(String source, String between, String clause) {
        boolean named = OWN.contains(source) || StringUtils.startsWithIgnoreCase(clause, source + " ");
        return (named ? "" : source + between) + speech.cited(clause);
    }

    /** The levels of an agent that are immediately dangerous: a level below them leaves no step behind. */
    public String dangerous(String agent, List<Row> rows) {
        StringBuilder out = new StringBuilder();
        for (Row row : rows) {
            if (row instanceof DangerLevel level && level.agent().equals(agent)) {
                out.append(line(
                        "",
                        say("table") + " " + level.ref().address() + " ("
                                + told("immediately dangerous from " + Figures.shown(level.value()) + " "
                                        + level.unit().symbol() + level.basis().after())
                                + ")" + place(level.ref().citation())));
            }
        }
        return out.toString();
    }

    /** The titles of the documents that a text cites by their ids. */
    public String documents(String text, Map<String, Document> documents) {
        StringBuilder out = new StringBuilder(say("Documents:") + "\n");
        String words = text.replaceAll("\\s+", " ").toLowerCase(Locale.ROOT);
        documents.forEach((id, document) -> {
            if (words.contains(" [" + id + " ") || words.contains(": " + id + " ")) {
                out.append(line("  ", id + ": " + document.title()));
            }
        });
        return out.toString();
    }

    /** The tipping points of a sweep. */
    public String tippingPoints(
            String path, String unit, List<Sweep.TippingPoint> points, UnaryOperator<String> agents) {
        if (points.isEmpty()) {
            return line("", say("Between these values of {0} the advice does not turn.", path));
        }
        StringBuilder out = new StringBuilder();
        for (Sweep.TippingPoint point : points) {
            out.append(say(
                            point.inclusive()
                                    ? "{0} above {1} {2}, shown at {3} {2}:"
                                    : "{0} from {1} {2}, shown at {3} {2}:",
                            path,
                            speech.spelt(point.at().toPlainString()),
                            unit,
                            speech.spelt(Figures.shown(point.shown()))))
                    .append('\n');
            MovedText.write(point.before(), point.after(), agents, this)
                    .lines()
                    .forEach(line -> out.append("  ").append(line).append('\n'));
        }
        return out.toString();
    }

    /** Which answers would settle most. */
    public String worth(List<AnswerValue.Worth> worths) {
        StringBuilder out = new StringBuilder();
        for (AnswerValue.Worth worth : worths) {
            out.append(line(
                    "  - ", ask(worth.question(), worth.ask()) + " (" + worth.question() + "): " + settles(worth)));
        }
        return out.toString();
    }

    /** A class of respirator by its name. */
    public String device(Respirator respirator) {
        return speech.named("device." + respirator.deviceClass(), respirator.name());
    }

    /** A question that is open. */
    public String ask(OpenQuestion question) {
        return ask(question.question(), question.ask());
    }

    private String ask(String id, String asked) {
        return speech.named("ask." + id, asked);
    }

    /** An answer may also open questions that nobody had to ask before it. */
    private String settles(AnswerValue.Worth worth) {
        int least = worth.least();
        int most = worth.most();
        if (least >= 0) {
            return most == 1 && least == 1
                    ? say("would settle one open item")
                    : say(
                            least == most ? "would settle {1} open items" : "would settle {0} to {1} open items",
                            least,
                            most);
        }
        return most <= 0
                ? say("may open {0} more", -least)
                : say("would settle up to {0} open items, or may open {1} more", most, -least);
    }

    /** The closing lines of every what-if output. */
    public String closing(Advice... advices) {
        return "\n"
                + Arrays.stream(advices)
                        .map(a -> say(
                                "Rule base revision {0}, code {1}, {2}.",
                                a.revision().substring(0, 16), a.code(), speech.spelt(a.on().toString())))
                        .distinct()
                        .collect(Collectors.joining("\n"))
                + "\n" + Glued.wrapped(told(Advice.CLOSING), WIDTH, "\n") + "\n";
    }
}
