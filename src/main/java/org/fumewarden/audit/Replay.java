package org.fumewarden.audit;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import org.fumewarden.report.AdviceTree;

/** Compares kept advice with the advice that the rules give now. */
public final class Replay {
    private final JsonNode kept;
    private final JsonNode now;

    /** Takes both pieces of advice as JSON. */
    public Replay(JsonNode kept, String now) {
        this.kept = kept;
        this.now = KeptAdvice.parse(now);
    }

    public boolean sameRevision() {
        return kept.path("revision").equals(now.path("revision"));
    }

    /** True when both are the same, canonical byte for canonical byte. */
    public boolean same() {
        return Canonical.text(kept.toString()).equals(Canonical.text(now.toString()));
    }

    /**
     * True when advice of an older format says the same: all of it in format 2, with nothing besides; in format 1 the answer
     * and its steps, for how that spelled premises is left out.
     */
    public boolean sameInOldForm() {
        String format = kept.path("format").asText();
        if (format.equals(AdviceTree.BY_REFERENCE)) {
            return sameRevision() && AdviceTree.readWhole(kept) && whole(kept).equals(whole(now));
        }
        return format.equals(AdviceTree.SPELLED_OUT)
                && sameRevision()
                && Canonical.text(answer(kept).toString())
                        .equals(Canonical.text(answer(now).toString()));
    }

    private static String whole(JsonNode advice) {
        ObjectNode whole = AdviceTree.opened(advice).deepCopy();
        whole.remove("format");
        return Canonical.text(whole.toString());
    }

    private static JsonNode answer(JsonNode advice) {
        ObjectNode answer = AdviceTree.opened(advice).deepCopy();
        ArrayNode steps = answer.arrayNode();
        for (JsonNode step : answer.path("trail").path("steps")) {
            steps.addArray()
                    .add(step.path("id"))
                    .add(step.path("rule"))
                    .add(step.path("subject"))
                    .add(step.path("says"));
        }
        answer.remove("format");
        answer.set("trail", steps);
        forget(answer);
        return answer;
    }

    /** Takes out what the first format wrote otherwise. */
    private static void forget(JsonNode node) {
        if (node instanceof ObjectNode object) {
            object.remove("edition");
            object.remove("unverified");
        }
        node.forEach(Replay::forget);
    }

    /** Where the two first differ, in canonical order: path, kept value, value now. */
    public Optional<String> firstDifference() {
        return first(
                "",
                KeptAdvice.parse(Canonical.text(kept.toString())),
                KeptAdvice.parse(Canonical.text(now.toString())));
    }

    private static Optional<String> first(String path, JsonNode a, JsonNode b) {
        if (a.isObject() && b.isObject()) {
            TreeSet<String> names = new TreeSet<>();
            a.fieldNames().forEachRemaining(names::add);
            b.fieldNames().forEachRemaining(names::add);
            return names.stream()
                    .map(n -> first(path + "/" + n, a.path(n), b.path(n)))
                    .flatMap(Optional::stream)
                    .findFirst();
        }
        if (a.isArray() && b.isArray()) {
            for (int i = 0; i < Math.max(a.size(), b.size()); i++) {
                Optional<String> found = first(path + "/" + i, a.path(i), b.path(i));
                if (found.isPresent()) {
                    return found;
                }
            }
            return Optional.empty();
        }
        return a.equals(b) ? Optional.empty() : Optional.of(path + ": kept " + shown(a) + ", now " + shown(b));
    }

    private static String shown(JsonNode node) {
        String text = node.isMissingNode() ? "nothing" : node.toString();
        return text.length() > 160 ? text.substring(0, 160) + "..." : text;
    }

    /** Rules that concluded something on one side only, and table rows that read differently. */
    public List<String> changedRulesAndRows() {
        List<String> changes = new ArrayList<>();
        Map<String, String> oldRules = sentences(kept);
        Map<String, String> newRules = sentences(now);
        compare("rule", oldRules, newRules, changes);
        compare("row", rows(kept), rows(now), changes);
        return changes;
    }

    private static void compare(String what, Map<String, String> before, Map<String, String> after, List<String> into) {
        TreeSet<String> ids = new TreeSet<>(before.keySet());
        ids.addAll(after.keySet());
        for (String id : ids) {
            if (!before.containsKey(id)) {
                into.add(what + " " + id + ": new, " + after.get(id));
            } else if (!after.containsKey(id)) {
                into.add(what + " " + id + ": no longer, was " + before.get(id));
            } else if (!before.get(id).equals(after.get(id))) {
                into.add(what + " " + id + ": was " + before.get(id) + ", is " + after.get(id));
            }
        }
    }

    private static Map<String, String> sentences(JsonNode advice) {
        Map<String, String> rules = new TreeMap<>();
        for (JsonNode step : AdviceTree.opened(advice).path("trail").path("steps")) {
            rules.merge(
                    step.path("rule").asText(),
                    step.path("says").asText(),
                    (a, b) -> a.contains(b) ? a : a + " | " + b);
        }
        return rules;
    }

    private static Map<String, String> rows(JsonNode advice) {
        Map<String, String> rows = new TreeMap<>();
        for (JsonNode step : AdviceTree.opened(advice).path("trail").path("steps")) {
            Iterator<JsonNode> premises = step.path("premises").elements();
            while (premises.hasNext()) {
                JsonNode premise = premises.next();
                if (premise.path("kind").asText().equals("row")) {
                    rows.put(
                            premise.path("address").asText(),
                            premise.path("words").asText() + " ["
                                    + premise.path("clause").asText() + ", "
                                    + premise.path("edition").asText() + ", "
                                    + premise.path("confidence").asText() + "]");
                }
            }
        }
        return rows;
    }
}
