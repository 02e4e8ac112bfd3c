package org.fumewarden.web;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import org.fumewarden.advice.Advice;
import org.fumewarden.advice.Reason;
import org.fumewarden.advice.Respirator;
import org.fumewarden.advice.UnitInHand;
import org.fumewarden.model.Lever;
import org.fumewarden.report.html.Speech;
import org.fumewarden.whatif.AnswerValue;
import org.fumewarden.whatif.Difference;
import org.fumewarden.whatif.Sweep;

/** What-if results as JSON. */
final class WhatIfJson {
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

    private WhatIfJson() {}

    static ArrayNode differences(List<Difference> differences) {
        ArrayNode list = NODES.arrayNode();
        for (Difference difference : differences) {
            ObjectNode node = list.addObject();
            node.put("what", difference.what());
            node.put("before", difference.before());
            node.put("after", difference.after());
            node.set("ceased", reasons(difference.ceased()));
            node.set("began", reasons(difference.began()));
        }
        return list;
    }

    private static ArrayNode reasons(List<Reason> reasons) {
        ArrayNode list = NODES.arrayNode();
        for (Reason reason : reasons) {
            ObjectNode node = list.addObject();
            node.put("rule", reason.rule());
            node.put("says", reason.says());
            node.put("source", reason.source());
            node.put("clause", reason.clause());
            node.put("unverified", reason.confidence().unverified());
        }
        return list;
    }

    /** The answer alone: what a plate shows. */
    static ObjectNode brief(Advice advice) {
        ObjectNode node = NODES.objectNode();
        node.put("title", advice.title());
        node.put("code", advice.code());
        node.put("code-name", advice.codeUsed().name());
        node.put("on", advice.on().toString());
        node.put("status", advice.status().key());
        node.put("factor", advice.requiredFactor().value().stripTrailingZeros().toPlainString());
        node.put("factor-open", advice.requiredFactor().open());
        node.put("basis", advice.requiredFactor().basis());
        ArrayNode without = node.putArray("without");
        advice.requiredFactor().withoutLimit().forEach(without::add);
        node.put("agent", advice.requiredFactor().agent());
        node.put("wear", advice.recommended().map(Respirator::name).orElse(""));
        node.put("class", advice.recommended().map(Respirator::deviceClass).orElse(""));
        node.put("filter", advice.recommended().map(Respirator::filter).orElse(""));
        node.put("unverified", advice.requiredFactor().reasons().stream().anyMatch(r -> r.confidence()
                .unverified()));
        node.put(
                "wear-unverified",
                advice.recommended().stream().flatMap(r -> r.reasons().stream()).anyMatch(r -> r.confidence()
                        .unverified()));
        node.put("questions", advice.questions().size());
        node.put("unit", advice.unit().map(UnitInHand::id).orElse(""));
        node.put("unit-condition", advice.unit().map(UnitInHand::condition).orElse(""));
        return node;
    }

    static ObjectNode point(Sweep.Point point) {
        ObjectNode node = brief(point.advice());
        node.put("value", point.value().toPlainString());
        ArrayNode serving = node.putArray("serving");
        Sweep.serving(point.advice()).forEach(r -> serving.add(r.deviceClass()));
        return node;
    }

    static ArrayNode tippingPoints(List<Sweep.TippingPoint> points) {
        ArrayNode list = NODES.arrayNode();
        for (Sweep.TippingPoint point : points) {
            ObjectNode node = list.addObject();
            node.put("at", point.at().toPlainString());
            node.put("inclusive", point.inclusive());
            node.set("turned", differences(point.turned()));
        }
        return list;
    }

    static ArrayNode remedies(List<List<Lever>> sets, Speech speech) {
        ArrayNode list = NODES.arrayNode();
        for (List<Lever> set : sets) {
            ArrayNode each = list.addArray();
            for (Lever lever : set) {
                ObjectNode node = each.addObject();
                node.put("path", lever.path());
                node.put("value", lever.value());
                node.put("says", speech.told(lever.says()));
            }
        }
        return list;
    }

    static ArrayNode worths(List<AnswerValue.Worth> worths) {
        ArrayNode list = NODES.arrayNode();
        for (AnswerValue.Worth worth : worths) {
            ObjectNode node = list.addObject();
            node.put("question", worth.question());
            node.put("ask", worth.ask());
            node.put("least", worth.least());
            node.put("most", worth.most());
        }
        return list;
    }
}
