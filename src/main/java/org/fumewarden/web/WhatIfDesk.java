package org.fumewarden.web;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.fumewarden.advice.Advice;
import org.fumewarden.advice.Bench;
import org.fumewarden.codes.Fault;
import org.fumewarden.codes.InputException;
import org.fumewarden.codes.Numbers;
import org.fumewarden.codes.Problem;
import org.fumewarden.model.Figures;
import org.fumewarden.report.SamplePart;
import org.fumewarden.report.TaskPlots;
import org.fumewarden.report.html.Speech;
import org.fumewarden.report.html.Words;
import org.fumewarden.report.plot.LadderChart;
import org.fumewarden.whatif.AnswerValue;
import org.fumewarden.whatif.Differences;
import org.fumewarden.whatif.Remedies;
import org.fumewarden.whatif.Sweep;
import org.fumewarden.whatif.Turns;

/** Answers what-if questions of the page. */
final class WhatIfDesk {
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;
    private static final int MOST_POINTS = 80;

    private final Desk desk;

    WhatIfDesk(Desk desk) {
        this.desk = desk;
    }

    Reply compare(JsonNode asked) {
        Words words = Desk.language(asked);
        Bench first = desk.bench(asked, "before");
        Bench second = desk.bench(asked, "after");
        Advice before = desk.fluent(first, words);
        Advice after = desk.fluent(second, words);
        ObjectNode root = NODES.objectNode();
        boolean one = desk.tongue(first, words).equals(desk.tongue(second, words));
        root.put("language", one ? desk.tongue(first, words) : "");
        root.set("before", WhatIfJson.brief(before));
        root.set("after", WhatIfJson.brief(after));
        root.set("differences", WhatIfJson.differences(Differences.between(before, after), speech(second, words)));
        return Reply.json(root);
    }

    /** What each other answer to some questions would move, the largest move first. */
    Reply turns(JsonNode asked) {
        ObjectNode root = NODES.objectNode();
        ArrayNode list = root.putArray("turns");
        Bench bench = desk.bench(asked);
        root.set("now", WhatIfJson.brief(bench.advise()));
        Set<String> questions = new HashSet<>();
        asked.path("questions").forEach(q -> questions.add(q.asText()));
        new Turns(bench).rank(questions).forEach(turn -> {
            ObjectNode each = list.addObject();
            each.put("question", turn.question().id());
            each.put("path", turn.question().path());
            each.put("value", turn.value());
            each.put("classes", turn.classes());
            each.put("moved", turn.moved());
            each.set("then", WhatIfJson.brief(turn.then()));
        });
        return Reply.json(root);
    }

    Reply sweep(JsonNode asked) {
        BigDecimal from = number(asked, "from");
        BigDecimal to = number(asked, "to");
        int count = asked.path("points").asInt(40);
        if (from.compareTo(to) >= 0 || count < 2 || count > MOST_POINTS) {
            throw new InputException(new Problem(
                    "request",
                    0,
                    "from",
                    "asks for " + count + " points from " + from + " to " + to + ".",
                    "give the smaller number first, and 2 to " + MOST_POINTS + " points."));
        }
        Words words = Desk.language(asked);
        Bench plain = desk.bench(asked);
        Bench bench = desk.tongue(plain, words).equals(words.language())
                ? plain.speaking(words.language(), words.names())
                : plain;
        String path = asked.path("path").asText("");
        String unit = asked.path("unit").asText("");
        Sweep sweep = new Sweep(bench, path, unit);
        List<Sweep.Point> points = sweep.points(from, to, count);
        ObjectNode root = NODES.objectNode();
        ArrayNode list = root.putArray("points");
        points.forEach(p -> list.add(WhatIfJson.point(p)));
        root.put("language", desk.tongue(plain, words));
        root.set("tipping", WhatIfJson.tippingPoints(sweep.tippingPoints(from, to, count), speech(plain, words)));
        root.put(
                "chart",
                LadderChart.svg(
                        words.say("ui.chart"),
                        asked.path("axis").asText(path) + " (" + unit + ")",
                        points.stream()
                                .map(p -> new LadderChart.Point(p.value(), named(p.advice(), words)))
                                .toList(),
                        speech(plain, words)::spelt));
        return Reply.json(root);
    }

    private static Speech speech(Bench bench, Words words) {
        return Speech.of(words, bench.book().vocabulary());
    }

    private static List<String> named(Advice advice, Words words) {
        return Sweep.serving(advice).stream()
                .map(r -> words.sayOr("device." + r.deviceClass(), r.name()))
                .toList();
    }

    private static BigDecimal number(JsonNode asked, String name) {
        String text = asked.path(name).asText("");
        try {
            return Numbers.decimal(text);
        } catch (NumberFormatException e) {
            throw new InputException(new Problem(
                    "request",
                    0,
                    name,
                    "is no number: \"" + text + "\".",
                    "write digits and a point, such as 0.05.",
                    Fault.AMOUNT));
        }
    }

    /** The plots of a task, with what they say in numbers. */
    Reply plots(JsonNode asked) {
        Words words = Desk.language(asked);
        ArrayNode list = NODES.arrayNode();
        for (TaskPlots.Drawn drawn : TaskPlots.of(desk.bench(asked))) {
            ObjectNode node = list.addObject();
            node.put("id", drawn.id());
            node.put("title", drawn.title());
            node.put("rests", SamplePart.inWords(words, drawn.rests()));
            node.put("svg", drawn.svg());
            node.put("words", drawn.words());
            ArrayNode lines = node.putArray("lines");
            drawn.lines().forEach(line -> lines.addObject()
                    .put("statistic", SamplePart.name(words, line))
                    .put("governs", SamplePart.governs(line, drawn.rests()))
                    .put("level", Figures.shown(line.level()))
                    .put("factor", Figures.factor(line.factor())));
        }
        return Reply.json(NODES.objectNode().set("plots", list));
    }

    /** The named variants that a task keeps: each a set of changes to try. */
    Reply variants(JsonNode asked) {
        ObjectNode root = NODES.objectNode();
        ArrayNode list = root.putArray("variants");
        desk.bench(asked).variants().forEach((name, changes) -> {
            ObjectNode each = list.addObject().put("name", name);
            ObjectNode told = each.putObject("changes");
            changes.forEach(told::put);
            each.set("task", TaskText.tree(desk.bench(asked).tree(changes)));
        });
        return Reply.json(root);
    }

    Reply explain(JsonNode asked) {
        ObjectNode root = NODES.objectNode();
        root.put("largest", Remedies.LARGEST);
        root.set(
                "remedies",
                WhatIfJson.remedies(
                        new Remedies(desk.bench(asked))
                                .forClass(asked.path("class").asText("")),
                        speech(desk.bench(asked), Desk.language(asked))));
        return Reply.json(root);
    }

    Reply askFirst(JsonNode asked) {
        ObjectNode root = NODES.objectNode();
        root.set("worths", WhatIfJson.worths(new AnswerValue(desk.bench(asked)).rank()));
        return Reply.json(root);
    }
}
