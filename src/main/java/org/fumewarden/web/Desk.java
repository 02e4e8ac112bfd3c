package org.fumewarden.web;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.stream.Stream;
import org.fumewarden.advice.Advice;
import org.fumewarden.advice.Bench;
import org.fumewarden.codes.Tongue;
import org.fumewarden.model.Citation;
import org.fumewarden.report.AdviceJson;
import org.fumewarden.report.PdfSheet;
import org.fumewarden.report.answer.AdviceSheet;
import org.fumewarden.report.html.Speech;
import org.fumewarden.report.html.Words;
import org.fumewarden.report.sheet.HtmlForm;
import org.fumewarden.report.sheet.Sheet;
import org.fumewarden.task.TaskTree;
import org.fumewarden.trail.Step;

/** Answers what the page asks. Nothing is kept between two questions but the compiled rules. */
final class Desk {
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

    /** How the command line asks for the annex; the page has a box to tick for it. */
    private static final String OPTION = " (advise --detail)";

    private final Library library;
    private final UpkeepDesk upkeep;
    private final Matters matters = new Matters();
    private final Map<String, Answerer> answerers;

    /** One kind of question. */
    interface Answerer {
        Reply answer(JsonNode asked);
    }

    Desk(Library library, UpkeepDesk upkeep) {
        this.library = library;
        this.upkeep = upkeep;
        WhatIfDesk whatIf = new WhatIfDesk(this);
        KeptDesk kept = new KeptDesk(this);
        TrainingDesk training = new TrainingDesk(this, library);
        this.answerers = Map.ofEntries(
                Map.entry("/api/words", this::words),
                Map.entry("/api/vocabulary", this::vocabulary),
                Map.entry("/api/codes", this::codes),
                Map.entry("/api/starts", asked -> Reply.json(Starts.json())),
                Map.entry("/api/advise", this::advise),
                Map.entry("/api/matters", this::matters),
                Map.entry("/api/open", this::open),
                Map.entry("/api/save", asked -> Reply.text(TaskText.yaml(asked.path("task")))),
                Map.entry("/api/sheet", this::sheet),
                Map.entry("/api/pdf", this::pdf),
                Map.entry("/api/replay", kept::replay),
                Map.entry("/api/kept", kept::kept),
                Map.entry("/api/said", this::said),
                Map.entry("/api/spelled", this::spelled),
                Map.entry("/api/turns", whatIf::turns),
                Map.entry("/api/training/round", training::round),
                Map.entry("/api/training/mark", training::mark),
                Map.entry("/api/training/paper", training::paper),
                Map.entry("/api/compare", whatIf::compare),
                Map.entry("/api/sweep", whatIf::sweep),
                Map.entry("/api/plots", whatIf::plots),
                Map.entry("/api/variants", whatIf::variants),
                Map.entry("/api/explain", whatIf::explain),
                Map.entry("/api/ask-first", whatIf::askFirst),
                Map.entry("/api/upkeep", upkeep::due),
                Map.entry("/api/history", upkeep::history),
                Map.entry("/api/log", upkeep::log),
                Map.entry("/api/item", upkeep::item),
                Map.entry("/api/register", upkeep::register));
    }

    Optional<Answerer> find(String path) {
        return Optional.ofNullable(answerers.get(path));
    }

    /** The task of a request, with what the register says when there is one. */
    Bench bench(JsonNode asked) {
        return bench(asked, "task");
    }

    Bench bench(JsonNode asked, String name) {
        return upkeep.inUse(Bench.ofText("task", TaskText.of(asked, name), library::advisor));
    }

    /** While somebody types, the values to compare before signing are not tried; the sheet and the file of the advice have them. */
    private Reply advise(JsonNode asked) {
        Bench bench = bench(asked);
        Words words = language(asked);
        return Reply.json(
                asked.path("typing").asBoolean()
                        ? AdviceJson.writeUntried(bench.advise())
                        : AdviceJson.write(
                                said(bench, words),
                                library.changed(bench.code()),
                                Speech.of(words, bench.book().vocabulary())));
    }

    /** The advice in the language of the words, by an advisor that is made once for it. */
    private static Advice said(Bench bench, Words words) {
        return bench.speaking(words.language(), words.names()).advise();
    }

    private Reply words(JsonNode asked) {
        Words words = language(asked);
        ObjectNode root = NODES.objectNode();
        root.put("language", words.language());
        ArrayNode languages = root.putArray("languages");
        Words.LANGUAGES.forEach(languages::add);
        ObjectNode all = root.putObject("words");
        words.named().forEach(key -> all.put(key, words.sayOr(key, "")));
        words.all().forEach(all::put);
        return Reply.json(root);
    }

    private Reply vocabulary(JsonNode asked) {
        String code = asked.path("code").asText("");
        List<String> codes = library.codes();
        String known = codes.contains(code) ? code : codes.get(0);
        return Reply.json(VocabularyJson.of(
                library.advisor(known).base().book(), day(asked.path("on").asText("")), language(asked)));
    }

    private LocalDate day(String text) {
        try {
            return LocalDate.parse(text);
        } catch (DateTimeException e) {
            return library.today();
        }
    }

    private Reply codes(JsonNode asked) {
        ArrayNode list = NODES.arrayNode();
        library.codes().forEach(id -> list.add(VocabularyJson.code(library.card(id))));
        ObjectNode root = NODES.objectNode();
        root.put("today", library.today().toString());
        root.set("codes", list);
        return Reply.json(root);
    }

    private Reply matters(JsonNode asked) {
        ObjectNode root = NODES.objectNode();
        ArrayNode list = root.putArray("questions");
        try {
            String page = asked.path("page").asText("");
            matters.of(page, TaskText.of(asked, "task"), bench(asked)).forEach(list::add);
        } catch (CancellationException e) {
            return Reply.refuse(409, "was overtaken by a newer one.", "wait for that.");
        }
        return Reply.json(root);
    }

    private Reply open(JsonNode asked) {
        var place = TaskTree.parse("file", asked.path("text").asText(""));
        JsonNode tree = TaskText.tree(place);
        place.settle();
        ObjectNode root = NODES.objectNode();
        root.set("task", written(tree));
        root.put("comments", TaskText.hasComments(asked.path("text").asText("")));
        return Reply.json(root);
    }

    private Reply sheet(JsonNode asked) {
        return Reply.styled(html(asked));
    }

    private Reply pdf(JsonNode asked) {
        return Reply.of("application/pdf", PdfSheet.write(html(asked)));
    }

    private String html(JsonNode asked) {
        Bench bench = bench(asked);
        boolean detail = asked.path("detail").asBoolean(true);
        Words words = language(asked);
        Sheet sheet = AdviceSheet.of(bench, bench.advise(), words, detail);
        return HtmlForm.write(library.changed(bench.code())
                        .map(folder -> sheet.under(words.say("sheet.foreign-rules", folder)))
                        .orElse(sheet))
                .replace(OPTION, "");
    }

    /** The sentences of the advice in the language of the page, by step, question and class; none in that of the rule base. */
    private Reply said(JsonNode asked) {
        ObjectNode root = NODES.objectNode();
        ObjectNode steps = root.putObject("steps");
        ObjectNode facts = root.putObject("facts");
        ObjectNode questions = root.putObject("questions");
        ObjectNode classes = root.putObject("classes");
        ObjectNode clauses = root.putObject("clauses");
        Words words = language(asked);
        if (!words.ofRuleBase()) {
            Bench bench = bench(asked);
            Tongue tongue = library.tongue(bench.code(), words);
            Advice said = said(bench, words);
            Speech speech = Speech.of(words, bench.book().vocabulary());
            for (Step step : said.trail().steps()) {
                if (tongue.sentences().containsKey(step.rule())) {
                    steps.put(step.id(), speech.spelt(speech.told(step.says())));
                }
                Stream.concat(
                                Stream.of(step.citation()),
                                step.premises().stream().flatMap(p -> p.citation().stream()))
                        .map(Citation::clause)
                        .forEach(c -> clauses.put(c, speech.cited(c)));
                step.premises().stream().filter(p -> !p.kind().equals("step")).forEach(p -> facts.withObjectProperty(
                                step.id())
                        .put(p.kind() + " " + p.address(), speech.spelt(speech.told(p.words()))));
            }
            said.questions().forEach(q -> questions.put(q.question(), words.sayOr("ask." + q.question(), q.ask())));
            said.respirators()
                    .forEach(r -> classes.put(r.deviceClass(), words.sayOr("device." + r.deviceClass(), r.name())));
        }
        return Reply.json(root);
    }

    /** The advice in the language of some words, when every sentence of its code is known in it. */
    Advice fluent(Bench bench, Words words) {
        return library.tongue(bench.code(), words).complete() ? said(bench, words) : bench.advise();
    }

    /** The language that {@link #fluent} speaks. */
    String tongue(Bench bench, Words words) {
        return library.tongue(bench.code(), words).complete() ? words.language() : Words.LANGUAGES.get(0);
    }

    /** The task with the words of the tables in place of those that people use for them. */
    private Reply spelled(JsonNode asked) {
        JsonNode task = asked.path("task");
        ObjectNode root = NODES.objectNode();
        root.set("task", written(task.isObject() ? task.deepCopy() : NODES.objectNode()));
        return Reply.json(root);
    }

    private JsonNode written(JsonNode task) {
        String code = library.known(task.path("code").asText(""));
        if (task instanceof ObjectNode top && !code.isEmpty()) {
            top.put("code", code);
        }
        String used = code.isEmpty() ? library.codes().get(0) : code;
        return new Spelled(library.advisor(used).base().book().vocabulary()).tree(task);
    }

    static Words language(JsonNode asked) {
        return Words.in(asked.path("language").asText("en"));
    }
}
