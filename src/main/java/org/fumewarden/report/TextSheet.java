package org.fumewarden.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.apache.commons.lang3.StringUtils;
import org.apache.commons.text.WordUtils;
import org.fumewarden.advice.Advice;
import org.fumewarden.advice.Check;
import org.fumewarden.advice.OpenQuestion;
import org.fumewarden.advice.Reason;
import org.fumewarden.advice.RequiredFactor;
import org.fumewarden.advice.Respirator;
import org.fumewarden.advice.Status;
import org.fumewarden.advice.UnitInHand;
import org.fumewarden.codes.Vocabulary;
import org.fumewarden.model.Figures;
import org.fumewarden.task.RegisterNote;

/** The advice sheet as plain text, the answer first. */
public final class TextSheet {
    private static final int WIDTH = 88;
    private static final int MANY = 3;

    private final Vocabulary vocabulary;
    private final StringBuilder out = new StringBuilder();

    private TextSheet(Vocabulary vocabulary) {
        this.vocabulary = vocabulary;
    }

    /** Writes the sheet. */
    public static String write(Advice advice, Vocabulary vocabulary) {
        return new TextSheet(vocabulary).sheet(advice);
    }

    private String sheet(Advice advice) {
        line(advice.title());
        line(StringUtils.repeat('=', Math.min(WIDTH, advice.title().length())));
        line("Code " + advice.codeUsed().id() + " (" + advice.codeUsed().name() + "), rules in force on "
                + advice.on());
        answer(advice);
        register(advice.register());
        section("Why", advice.hazards());
        section(
                advice.status() == Status.DO_NOT_ENTER
                        ? "Must not start or enter because"
                        : "What closes the way to some respirators",
                advice.stops());
        section("Two rules disagree", advice.conflicts());
        section("Before any respirator", advice.controlsFirst());
        section("Filters", advice.filters());
        questions(advice.questions());
        others(advice);
        barred(advice.with("barred"));
        checks(advice.checks());
        section("Cautions", advice.cautions());
        basis(advice);
        return out.toString();
    }

    private void answer(Advice advice) {
        head("Answer");
        switch (advice.status()) {
            case DO_NOT_ENTER -> paragraph("DO NOT ENTER, DO NOT START. " + first(advice), 2);
            case CONFLICT -> paragraph("CONFLICT. The file and the rules disagree; resolve that first.", 2);
            case INCOMPLETE ->
                paragraph(
                        "NOT COMPLETE. " + advice.questions().size()
                                + " open question(s) below. Nothing is cleared until they are answered.",
                        2);
            case COMPLETE -> {}
        }
        factor(advice.requiredFactor(), advice.status());
        advice.unit().ifPresent(this::unit);
        advice.recommended().ifPresent(this::wear);
        List<Respirator> undecided = advice.with("undecided");
        if (advice.recommended().isEmpty() && !undecided.isEmpty()) {
            String names =
                    undecided.stream().limit(4).map(Respirator::deviceClass).collect(Collectors.joining(", "));
            paragraph(
                    "May serve once the questions are answered: " + names + (undecided.size() > 4 ? ", ..." : "") + ".",
                    2);
        }
    }

    private static String first(Advice advice) {
        if (!advice.stops().isEmpty()) {
            return advice.stops().get(0).says();
        }
        return ("No class of respirator in this code serves this task. " + String.join(" ", advice.barringAll()))
                .strip();
    }

    /** Where nobody may enter, a low figure must not read as leave to work without a respirator. */
    private void factor(RequiredFactor factor, Status status) {
        String value = Figures.shown(factor.value());
        String open = factor.open() ? " so far; at least one need cannot be worked out yet" : "";
        if (factor.asksForOne()) {
            paragraph(
                    "Required protection factor: " + value + open + " (" + vocabulary.name(factor.agent()) + ", "
                            + factor.statistic() + ")" + marks(factor.reasons()),
                    2);
        } else if (status != Status.DO_NOT_ENTER) {
            paragraph(unasked(factor, open), 2);
        }
        if (!factor.withoutLimit().isEmpty()) {
            String agents = factor.withoutLimit().stream().map(vocabulary::name).collect(Collectors.joining("; "));
            paragraph("Not in this figure, since this code has no limit for it: " + agents + ".", 2);
        }
        if (!factor.byStatistic().isEmpty()) {
            String others = factor.byStatistic().stream()
                    .map(s -> s.statistic() + " " + Figures.shown(s.factor()))
                    .collect(Collectors.joining("; "));
            paragraph("The same samples by other statistics: " + others + ".", 2);
        }
    }

    private static String unasked(RequiredFactor factor, String open) {
        if (factor.restsOnNothing()) {
            return "No level could be compared with a limit, so there is no factor to give.";
        }
        return factor.open()
                ? "No figure asks for a respirator" + open + "."
                : "By these figures no respirator is required.";
    }

    /** The unit in hand before its class: what lies ready is what is put on. */
    private void unit(UnitInHand unit) {
        if (unit.reasons().isEmpty()) {
            return;
        }
        String name = unit.id().isEmpty() ? "This unit" : "Unit " + unit.id();
        paragraph(name + ": " + (unit.barred() ? "DO NOT USE IT." : "not shown to be fit for use."), 2);
        unit.reasons().forEach(this::reason);
        if (!unit.heals().isEmpty()) {
            paragraph("What mends this: " + String.join("; ", unit.heals()) + ".", 4);
        }
    }

    private void wear(Respirator respirator) {
        paragraph(
                "Wear: " + respirator.name() + ", assigned factor "
                        + respirator.factor().map(f -> f.toPlainString()).orElse("none")
                        + ", filter: " + respirator.filter() + "." + marks(respirator.reasons()),
                2);
        respirator.conditions().forEach(this::reason);
    }

    private void others(Advice advice) {
        group(
                advice.status() == Status.DO_NOT_ENTER
                        ? "Only if entry cannot be avoided, under a permit"
                        : "Also suitable",
                advice.with("suitable"));
        group("Undecided until the questions are answered", advice.with("undecided"));
    }

    private void group(String title, List<Respirator> respirators) {
        if (respirators.isEmpty()) {
            return;
        }
        head(title);
        for (Respirator respirator : respirators) {
            String factor =
                    respirator.factor().map(f -> "factor " + f.toPlainString()).orElse("");
            paragraph(
                    "- " + respirator.deviceClass() + ": " + respirator.name() + ", " + factor
                            + marks(respirator.reasons()),
                    2);
        }
    }

    /** What bars, and under it every class it bars: short enough to read, and no reason is left out. */
    private void barred(List<Respirator> respirators) {
        if (respirators.isEmpty()) {
            return;
        }
        head("Barred");
        Map<String, List<String>> classes = new LinkedHashMap<>();
        Map<String, Reason> reasons = new LinkedHashMap<>();
        for (Respirator respirator : respirators) {
            for (Reason reason : respirator.reasons()) {
                String key = reason.rule() + reason.says();
                reasons.putIfAbsent(key, reason);
                classes.computeIfAbsent(key, k -> new ArrayList<>()).add(respirator.deviceClass());
            }
        }
        reasons.forEach((key, reason) -> {
            reason(reason);
            paragraph("bars " + String.join(", ", classes.get(key)), 6);
        });
    }

    private void register(List<RegisterNote> notes) {
        if (!notes.isEmpty()) {
            head("What the register says");
            notes.forEach(n -> {
                paragraph("- " + n.says(), 4);
                paragraph("[" + n.about() + "]", 6);
            });
        }
    }

    private void questions(List<OpenQuestion> questions) {
        if (questions.isEmpty()) {
            return;
        }
        head("Still open: answer or measure these");
        for (OpenQuestion question : questions) {
            paragraph("- " + question.ask() + " (" + question.question() + ")", 2);
        }
    }

    private void checks(List<Check> checks) {
        if (checks.isEmpty()) {
            return;
        }
        head("Checks and records owed");
        for (Check check : checks) {
            String record = check.recorded() ? "; record it, keep: " + check.keep() : "";
            paragraph("- " + check.what() + " (" + check.when() + ", " + check.who() + record + ")", 2);
            paragraph(
                    "[" + check.id() + ", " + check.clause() + ", " + check.force() + "]"
                            + (check.confidence().unverified() ? " unverified" : ""),
                    6);
        }
    }

    private void basis(Advice advice) {
        head("Basis");
        paragraph(
                "Editions: " + advice.codeUsed().edition() + "; checked on "
                        + advice.codeUsed().checkedOn() + ".",
                2);
        if (!advice.codeUsed().lacks().isEmpty()) {
            paragraph("Not covered: " + String.join("; ", advice.codeUsed().lacks()) + ".", 2);
        }
        paragraph(
                "Rule base revision: " + advice.revision().substring(0, 16) + "; "
                        + advice.trail().steps().size() + " steps in the trail.",
                2);
        paragraph(
                "\"unverified\" marks a value or clause that is known from memory and was not compared with its text.",
                2);
        paragraph(Advice.CLOSING, 2);
    }

    private void section(String title, List<Reason> reasons) {
        if (!reasons.isEmpty()) {
            head(title);
            grouped(reasons);
        }
    }

    /** Sentences of one rule that repeat themselves are said once, with the other subjects after it. */
    private void grouped(List<Reason> reasons) {
        Map<String, List<Reason>> byRule = new LinkedHashMap<>();
        reasons.forEach(
                r -> byRule.computeIfAbsent(r.rule(), k -> new ArrayList<>()).add(r));
        byRule.values().forEach(same -> {
            if (same.size() < MANY) {
                same.forEach(this::reason);
                return;
            }
            reason(same.get(0));
            String others = same.stream()
                    .skip(1)
                    .map(r -> vocabulary.nameWithin(r.subject()))
                    .distinct()
                    .collect(Collectors.joining(", "));
            paragraph("Likewise: " + others + ".", 6);
        });
    }

    private void reason(Reason reason) {
        paragraph("- " + reason.says(), 4);
        paragraph(
                "[" + reason.rule() + ": " + reason.source() + " " + reason.clause() + "]"
                        + (reason.confidence().unverified() ? " unverified" : ""),
                6);
    }

    private static String marks(List<Reason> reasons) {
        return reasons.stream().anyMatch(r -> r.confidence().unverified()) ? " (unverified)" : "";
    }

    private void head(String title) {
        out.append('\n');
        line(title);
        line(StringUtils.repeat('-', title.length()));
    }

    private void paragraph(String text, int indent) {
        String wrapped = WordUtils.wrap(text, WIDTH - indent, "\n", false);
        String pad = StringUtils.repeat(' ', indent);
        String hang = text.startsWith("- ") ? pad + "  " : pad;
        line(pad + wrapped.replace("\n", "\n" + hang));
    }

    private void line(String text) {
        out.append(text).append('\n');
    }
}
