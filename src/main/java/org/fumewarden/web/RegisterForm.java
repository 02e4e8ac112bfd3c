package org.fumewarden.web;

import com.fasterxml.jackson.databind.JsonNode;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.fumewarden.codes.Fault;
import org.fumewarden.codes.InputException;
import org.fumewarden.codes.Located;
import org.fumewarden.codes.Problem;
import org.fumewarden.duties.Vocabularies;
import org.fumewarden.upkeep.Draft;
import org.fumewarden.upkeep.Forms;
import org.fumewarden.upkeep.Store;

/** Turns the form of the page for a new item into a draft. */
final class RegisterForm {
    private static final int LONGEST = 500;

    private final Store store;
    private final LocalDate today;

    RegisterForm(Store store, LocalDate today) {
        this.store = store;
        this.today = today;
    }

    Draft filled(JsonNode asked) {
        String kind = asked.path("kind").asText("");
        if (!Forms.itemKinds().contains(kind)) {
            throw problem(
                    Fault.CHOICE, "kind", "cannot be \"" + Located.shown(kind) + "\".", "choose one of the list.");
        }
        Map<String, String> values = new LinkedHashMap<>();
        asked.path("values").fields().forEachRemaining(e -> values.put(e.getKey(), text(e.getKey(), e.getValue())));
        Map<String, List<String>> facts = Vocabularies.shipped(today).take("register", values);
        List<String> fields =
                Forms.itemFields(kind).stream().map(Forms.Field::name).toList();
        values.keySet().retainAll(fields);
        if (store.item(values.getOrDefault("id", "")).isPresent()
                && !asked.path("sure").asBoolean(false)) {
            throw problem(
                    Fault.THERE,
                    "sure",
                    "is registered already: \"" + Located.shown(values.get("id")) + "\".",
                    "another id.");
        }
        return Draft.registering(
                Forms.item(kind, values, facts), today, asked.path("by").asText(""));
    }

    private static String text(String name, JsonNode value) {
        String text = value.asText("").strip();
        if (text.length() > LONGEST) {
            throw problem(Fault.OTHER, name, "has " + text.length() + " characters.", "at most " + LONGEST + ".");
        }
        return text;
    }

    private static InputException problem(Fault fault, String field, String message, String maybe) {
        return new InputException(new Problem("register", 0, field, message, maybe, fault));
    }
}
