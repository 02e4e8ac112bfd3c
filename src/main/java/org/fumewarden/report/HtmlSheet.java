package org.fumewarden.report;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.Collectors;
import org.fumewarden.advice.Advice;
import org.fumewarden.advice.Check;
import org.fumewarden.advice.OpenQuestion;
import org.fumewarden.advice.Reason;
import org.fumewarden.advice.RequiredFactor;
import org.fumewarden.advice.Respirator;
import org.fumewarden.advice.Status;
import org.fumewarden.advice.UnitInHand;
import org.fumewarden.codes.Vocabulary;
import org.fumewarden.report.html.Citations;
import org.fumewarden.report.html.Markup;
import org.fumewarden.report.html.Words;
import org.fumewarden.task.RegisterNote;
import org.fumewarden.whatif.Bench;

/** The advice sheet as one HTML file that needs nothing else: no script, no network, the answer first. */
public final class HtmlSheet {
    private static final int FEW = 4;

    private final Vocabulary vocabulary;
    private final Words words;
    private final Markup out = new Markup();
    private final Citations cite;
    private final List<SamplePart.Sampled> samples;

    private HtmlSheet(Vocabulary vocabulary, Words words, List<SamplePart.Sampled> samples) {
        this.samples = List.copyOf(samples);
        this.vocabulary = vocabulary;
        this.words = words;
        this.cite = new Citations(out, words, vocabulary::nameWithin);
    }

    /** Writes the sheet of advice alone, without plots; it is well-formed XML as well as HTML. */
    public static String write(Advice advice, Vocabulary vocabulary, Words words) {
        return new HtmlSheet(vocabulary, words, List.of()).sheet(advice);
    }

    /** Writes the sheet of a task: the advice on it, and the plots of its samples. */
    public static String write(Bench bench, Advice advice, Words words) {
        Vocabulary vocabulary = bench.advisor(bench.code()).base().book().vocabulary();
        return new HtmlSheet(vocabulary, words, ExposureSheet.sampled(bench, advice)).sheet(advice);
    }

    /** The style of the sheet, which also stands inside it. */
    public static String style() {
        try (InputStream in = HtmlSheet.class.getResourceAsStream("sheet.css")) {
            if (in == null) {
                throw new IllegalStateException("the program lacks the style of its sheet");
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8).replace("\r\n", "\n");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private String sheet(Advice advice) {
        out.own("<!DOCTYPE html>\n<html xmlns=\"http://www.w3.org/1999/xhtml\" lang=\"" + words.language() + "\">\n");
        out.element("head", () -> {
            out.own("<meta charset=\"utf-8\"/>\n");
            out.own("<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\"/>\n");
            out.own("<meta name=\"generator\" content=\"Fumewarden\"/>\n");
            out.words("title", "", advice.title() + " - " + words.say("sheet.kind"));
            out.own("<style>").own(style()).own("</style>\n");
        });
        out.element("body", () -> {
            out.element("header", () -> head(advice));
            out.element("main", () -> body(advice));
            out.element("footer", () -> out.words("p", "closing", words.say("closing")));
        });
        return out.own("</html>\n").toString();
    }

    private void head(Advice advice) {
        out.words("p", "kind", words.say("sheet.kind"));
        out.words("h1", "", advice.title());
        out.words(
                "p",
                "under",
                words.say(
                        "sheet.decided",
                        advice.codeUsed().id(),
                        advice.codeUsed().name(),
                        advice.on()));
    }

    private void body(Advice advice) {
        plate(advice);
        section("open", advice.questions(), this::question);
        sentences("stops", advice.stops());
        sentences("conflicts", advice.conflicts());
        section("register", advice.register(), this::registered);
        sentences("conditions", advice.recommended().map(Respirator::conditions).orElse(List.of()));
        sentences("chosen", advice.recommended().map(Respirator::reasons).orElse(List.of()));
        sentences("controls", advice.controlsFirst());
        sentences("hazards", advice.hazards());
        sentences("filters", advice.filters());
        new SamplePart(out, words).write(advice.requiredFactor(), samples);
        classes(advice.status() == Status.DO_NOT_ENTER ? "entry" : "suitable", advice.with("suitable"));
        classes("undecided", advice.with("undecided"));
        List<Respirator> barred = advice.with("barred");
        if (!barred.isEmpty()) {
            out.section("barred", words.say("sheet.barred"), () -> cite.barred(barred));
        }
        checks(advice.checks());
        sentences("cautions", advice.cautions());
        out.section("basis", words.say("sheet.basis"), () -> basis(advice));
    }

    /** The answer, as the four lines a person reads first. */
    private void plate(Advice advice) {
        out.own("<section class=\"plate " + advice.status().key() + "\" aria-labelledby=\"answer\">\n");
        out.own("<h2 id=\"answer\">").text(words.say("sheet.answer")).own("</h2>\n");
        out.element("dl", () -> {
            pair("status", words.say("status." + advice.status().key()));
            if (advice.status() == Status.INCOMPLETE) {
                pair("open", words.say("sheet.open.count", advice.questions().size()));
            }
            pair("factor", factor(advice.requiredFactor()) + without(advice.requiredFactor()));
            advice.unit().filter(u -> !u.reasons().isEmpty()).ifPresent(this::unit);
            pair("wear", advice.recommended().map(this::wear).orElseGet(() -> none(advice)));
            advice.recommended().ifPresent(r -> pair("filter", r.filter()));
        });
        out.own("</section>\n");
    }

    private void unit(UnitInHand unit) {
        String heals =
                unit.heals().isEmpty() ? "" : " " + words.say("sheet.unit.heals", String.join("; ", unit.heals()));
        String why = unit.reasons().stream().map(Reason::says).collect(Collectors.joining(" "));
        String name = unit.id().isEmpty() ? words.say("sheet.unit.this") : words.say("sheet.unit.named", unit.id());
        pair(
                "unit " + unit.condition(),
                "plate.unit",
                name + ": " + words.say("sheet.unit." + unit.condition()) + " " + why + heals);
    }

    private void pair(String key, String value) {
        pair(key, "plate." + key, value);
    }

    private void pair(String styles, String label, String value) {
        out.element("div", styles, () -> {
            out.words("dt", "", words.say(label));
            out.words("dd", "", value);
        });
    }

    private String factor(RequiredFactor factor) {
        String open = factor.open() ? " " + words.say("sheet.factor.open") : "";
        if (factor.restsOnNothing()) {
            return words.say("sheet.factor.nothing");
        }
        if (!factor.asksForOne()) {
            return factor.open() ? words.say("sheet.factor.none.open") + open : words.say("sheet.factor.none");
        }
        return factor.value().stripTrailingZeros().toPlainString() + " (" + vocabulary.name(factor.agent()) + ")" + open
                + unverified(factor.reasons());
    }

    private String without(RequiredFactor factor) {
        if (factor.withoutLimit().isEmpty()) {
            return "";
        }
        String agents = factor.withoutLimit().stream().map(vocabulary::name).collect(Collectors.joining("; "));
        return ". " + words.say("sheet.factor.without", agents);
    }

    private String wear(Respirator respirator) {
        String factor = respirator.factor().map(f -> f.toPlainString()).orElse("-");
        return words.say("sheet.wear", respirator.name(), factor) + unverified(respirator.reasons());
    }

    private String none(Advice advice) {
        List<Respirator> undecided = advice.with("undecided");
        if (undecided.isEmpty()) {
            return (words.say("sheet.wear.none") + ". " + String.join(" ", advice.barringAll())).strip();
        }
        String names =
                undecided.stream().limit(FEW).map(Respirator::deviceClass).collect(Collectors.joining(", "));
        return words.say("sheet.wear.undecided", names + (undecided.size() > FEW ? ", ..." : ""));
    }

    private String unverified(List<Reason> reasons) {
        boolean any = reasons.stream().anyMatch(r -> r.confidence().unverified());
        return any ? " \u25B3 " + words.say("sheet.unverified") : "";
    }

    private void sentences(String key, List<Reason> reasons) {
        if (!reasons.isEmpty()) {
            out.section(key, words.say("sheet." + key), () -> cite.list(reasons));
        }
    }

    private <T> void section(String key, List<T> items, java.util.function.Consumer<T> write) {
        if (!items.isEmpty()) {
            out.section(
                    key, words.say("sheet." + key), () -> out.element("ul", "sentences", () -> items.forEach(write)));
        }
    }

    private void registered(RegisterNote note) {
        out.element("li", () -> {
            cite.says(note.says());
            out.words("p", "cite", note.about());
        });
    }

    private void question(OpenQuestion question) {
        out.element("li", () -> {
            cite.says(words.sayOr("ask." + question.question(), question.ask()));
            out.words("p", "cite", question.question());
        });
    }

    private void classes(String key, List<Respirator> respirators) {
        if (respirators.isEmpty()) {
            return;
        }
        String[] heads = {
            words.say("column.class"), words.say("column.name"), words.say("column.factor"), words.say("column.filter")
        };
        out.section(
                key,
                words.say("sheet." + key),
                () -> out.table(
                        "classes",
                        heads,
                        () -> respirators.forEach(r -> out.element("tr", () -> {
                            out.rowHead(r.deviceClass());
                            out.words("td", "", r.name() + unverified(r.reasons()));
                            out.words(
                                    "td",
                                    "number",
                                    r.factor().map(f -> f.toPlainString()).orElse("-"));
                            out.words("td", "", r.filter());
                        }))));
    }

    private void checks(List<Check> checks) {
        if (checks.isEmpty()) {
            return;
        }
        String[] heads = {
            words.say("column.what"),
            words.say("column.when"),
            words.say("column.who"),
            words.say("column.keep"),
            words.say("column.rests")
        };
        out.section(
                "checks",
                words.say("sheet.checks"),
                () -> out.table(
                        "checks",
                        heads,
                        () -> checks.forEach(c -> out.element("tr", () -> {
                            out.rowHead(c.what());
                            out.words("td", "", c.when());
                            out.words("td", "", c.who());
                            out.words("td", "", c.recorded() ? c.keep() : words.say("sheet.norecord"));
                            out.element("td", () -> {
                                out.text(c.id() + ", " + c.source() + ", " + c.clause() + ", " + c.force());
                                cite.mark(c.confidence());
                            });
                        }))));
    }

    private void basis(Advice advice) {
        out.words(
                "p",
                "",
                words.say(
                        "sheet.editions",
                        advice.codeUsed().edition(),
                        advice.codeUsed().checkedOn()));
        if (!advice.codeUsed().lacks().isEmpty()) {
            out.words(
                    "p",
                    "",
                    words.say("sheet.lacks", String.join("; ", advice.codeUsed().lacks())));
        }
        out.words(
                "p",
                "",
                words.say(
                        "sheet.revision",
                        advice.revision(),
                        advice.trail().steps().size()));
        out.words("p", "", words.say("sheet.unverified.means"));
        if (!words.ofRuleBase()) {
            out.words("p", "", words.say("sheet.untranslated"));
        }
    }
}
