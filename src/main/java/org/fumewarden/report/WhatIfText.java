package org.fumewarden.report;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.UnaryOperator;
import org.apache.commons.lang3.StringUtils;
import org.fumewarden.advice.Advice;
import org.fumewarden.advice.Reason;
import org.fumewarden.codes.Document;
import org.fumewarden.model.Citation;
import org.fumewarden.model.DangerLevel;
import org.fumewarden.model.Figures;
import org.fumewarden.model.Row;
import org.fumewarden.report.html.Glued;
import org.fumewarden.trail.Premise;
import org.fumewarden.trail.Step;
import org.fumewarden.whatif.AnswerValue;
import org.fumewarden.whatif.Derivation;
import org.fumewarden.whatif.Sweep;

/** What-if results as plain text. */
public final class WhatIfText {
    private static final int WIDTH = 90;

    private WhatIfText() {}

    /** A state or verdict as people say it; anything else as it stands. */
    public static String shown(String value) {
        return switch (StringUtils.substringBefore(value, ",")) {
            case "complete" -> "answered";
            case "incomplete" -> "not settled";
            case "do-not-enter" -> "stop";
            case "barred" -> "ruled out" + value.substring("barred".length());
            default -> value;
        };
    }

    /** A text behind its lead, broken between words; what follows stands further in. */
    public static String line(String lead, String text) {
        String rest = " ".repeat(lead.isEmpty() ? 4 : lead.length() + 2);
        return lead + Glued.wrapped(text, WIDTH - rest.length(), "\n" + rest) + "\n";
    }

    /** Sources without a document; their clause says what they are. */
    private static final Set<String> OWN = Set.of("practice", "fumewarden");

    /** A sentence with its rule and clause. */
    public static String reason(Reason reason) {
        return reason.says() + " [" + reason.rule() + ": "
                + (OWN.contains(reason.source()) ? "" : reason.source() + " ") + reason.clause() + "]";
    }

    /** The tree of a derivation. */
    public static String tree(Derivation derivation, Step step) {
        StringBuilder all = new StringBuilder();
        for (Derivation.Line line : derivation.tree(step)) {
            StringBuilder out = new StringBuilder();
            if (line.step() != null) {
                Step s = line.step();
                out.append(s.id()).append(' ').append(s.says());
                out.append(" [")
                        .append(s.rule())
                        .append(": ")
                        .append(cited(s.citation()))
                        .append(']');
                s.overriddenBy().ifPresent(rule -> out.append(" lifted by ").append(rule));
            } else {
                premise(out, line.premise());
            }
            all.append(line(StringUtils.repeat("  ", line.depth()), out.toString()));
        }
        return all.toString();
    }

    private static void premise(StringBuilder out, Premise premise) {
        out.append(premise.kind().equals("row") ? "table " : "given ");
        out.append(premise.address()).append(" (").append(premise.words()).append(')');
        premise.citation().ifPresent(c -> out.append(place(c)));
    }

    private static String place(Citation cited) {
        return " [" + cited(cited)
                + (cited.edition().isEmpty() ? "" : ", " + cited.edition())
                + (cited.isOfOrganisation() ? "" : ", " + cited.confidence().key())
                + "]";
    }

    private static String cited(Citation cited) {
        return cited.source() + (cited.isOfOrganisation() ? ", " : " ") + cited.clause();
    }

    /** The levels of an agent that are immediately dangerous: a level below them leaves no step behind. */
    public static String dangerous(String agent, List<Row> rows) {
        StringBuilder out = new StringBuilder();
        for (Row row : rows) {
            if (row instanceof DangerLevel level && level.agent().equals(agent)) {
                out.append(line(
                        "",
                        "table " + level.ref().address() + " (immediately dangerous from "
                                + Figures.shown(level.value())
                                + " " + level.unit().symbol() + level.basis().after() + ")"
                                + place(level.ref().citation())));
            }
        }
        return out.toString();
    }

    /** The titles of the documents that a text cites by their ids. */
    public static String documents(String text, Map<String, Document> documents) {
        StringBuilder out = new StringBuilder("Documents:\n");
        documents.forEach((id, document) -> {
            if (text.contains(" [" + id + " ") || text.contains(": " + id + " ")) {
                out.append(line("  ", id + ": " + document.title()));
            }
        });
        return out.toString();
    }

    /** The tipping points of a sweep. */
    public static String tippingPoints(
            String path, String unit, List<Sweep.TippingPoint> points, UnaryOperator<String> agents) {
        if (points.isEmpty()) {
            return "Between these values of " + path + " the advice does not turn.\n";
        }
        StringBuilder out = new StringBuilder();
        for (Sweep.TippingPoint point : points) {
            out.append(path).append(' ').append(point.inclusive() ? "above " : "from ");
            out.append(point.at().toPlainString()).append(' ').append(unit);
            out.append(", shown at ")
                    .append(Figures.shown(point.shown()))
                    .append(' ')
                    .append(unit)
                    .append(":\n");
            for (String line :
                    MovedText.write(point.before(), point.after(), agents).split("\n")) {
                out.append("  ").append(line).append('\n');
            }
        }
        return out.toString();
    }

    /** Which answers would settle most. */
    public static String worth(List<AnswerValue.Worth> worths) {
        StringBuilder out = new StringBuilder();
        for (AnswerValue.Worth worth : worths) {
            out.append(line("  - ", worth.ask() + " (" + worth.question() + "): " + settles(worth)));
        }
        return out.toString();
    }

    /** An answer may also open questions that nobody had to ask before it. */
    private static String settles(AnswerValue.Worth worth) {
        if (worth.least() >= 0) {
            return "would settle " + (worth.least() == worth.most() ? "" : worth.least() + " to ") + worth.most()
                    + (worth.most() == 1 ? " open item" : " open items");
        }
        String opens = "may open " + -worth.least() + " more";
        return worth.most() <= 0
                ? opens
                : "would settle up to " + worth.most() + (worth.most() == 1 ? " open item, or " : " open items, or ")
                        + opens;
    }

    /** The closing lines of every what-if output. */
    public static String closing(Advice advice) {
        return "\nRule base revision " + advice.revision().substring(0, 16) + ", code " + advice.code() + ", "
                + advice.on() + ".\n" + Glued.wrapped(Advice.CLOSING, WIDTH, "\n") + "\n";
    }
}
