package org.fumewarden.web;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import org.fumewarden.advice.Advice;
import org.fumewarden.audit.Replay;
import org.fumewarden.codes.Fault;
import org.fumewarden.codes.InputException;
import org.fumewarden.codes.Problem;
import org.fumewarden.report.AdviceJson;

/** Compares advice that was kept: with what the rules say now, or with other advice that was kept. */
final class KeptDesk {
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;
    private static final ObjectMapper MAPPER = new ObjectMapper();
    private static final String KEPT = ": kept ";
    private static final String NOW = ", now ";

    private final Desk desk;

    KeptDesk(Desk desk) {
        this.desk = desk;
    }

    /** Decides the task anew and compares it with advice that was given before. */
    Reply replay(JsonNode asked) {
        Advice advice = desk.bench(asked).advise();
        JsonNode kept = parsed(asked, "advice");
        ObjectNode root = compared(new Replay(kept, AdviceJson.writeAs(kept, advice)));
        root.put("revision", advice.revision());
        root.put("steps", advice.trail().steps().size());
        return Reply.json(root);
    }

    /** Compares two files of advice. */
    Reply kept(JsonNode asked) {
        JsonNode first = parsed(asked, "first");
        JsonNode second = parsed(asked, "second");
        ObjectNode root = compared(new Replay(first, second.toString()));
        root.set("before", head(first));
        root.set("after", head(second));
        return Reply.json(root);
    }

    /** Advice as a file holds it: by itself, or inside the file of a chain. */
    private static JsonNode parsed(JsonNode asked, String name) {
        try {
            JsonNode file = MAPPER.readTree(asked.path(name).asText(""));
            JsonNode advice = file.path("advice").isObject() ? file.path("advice") : file;
            if (advice.path("trail").isObject()) {
                return advice;
            }
        } catch (JsonProcessingException e) {
            // It is no JSON; the sentence below says so.
        }
        throw new InputException(
                new Problem("file", 0, name, "is no advice.", "choose a file saved as JSON.", Fault.NO_ADVICE));
    }

    private static ObjectNode head(JsonNode advice) {
        ObjectNode head = NODES.objectNode();
        for (String name : new String[] {"title", "code", "on", "status", "revision"}) {
            head.put(name, advice.path(name).asText(""));
        }
        return head;
    }

    private static ObjectNode compared(Replay replay) {
        ObjectNode root = NODES.objectNode();
        root.put("same", replay.same() || replay.sameInOldForm());
        root.put("same-revision", replay.sameRevision());
        replay.firstDifference().ifPresent(told -> {
            int kept = told.indexOf(KEPT);
            int now = told.indexOf(NOW, kept);
            root.put("place", told.substring(0, kept));
            root.put("then", told.substring(kept + KEPT.length(), now));
            root.put("now", told.substring(now + NOW.length()));
        });
        replay.changedRulesAndRows().forEach(root.putArray("changes")::add);
        return root;
    }
}
