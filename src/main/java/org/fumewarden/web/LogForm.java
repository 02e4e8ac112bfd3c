package org.fumewarden.web;

import com.fasterxml.jackson.databind.JsonNode;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.Map;
import org.fumewarden.codes.Fault;
import org.fumewarden.codes.InputException;
import org.fumewarden.codes.Located;
import org.fumewarden.codes.Problem;
import org.fumewarden.duties.DutyBook;
import org.fumewarden.duties.EntryForm;
import org.fumewarden.duties.Judging;
import org.fumewarden.upkeep.Forms;
import org.fumewarden.upkeep.Item;
import org.fumewarden.upkeep.Store;

/** The log form of the page, with a complaint for the field that cannot be. */
final class LogForm {
    private static final int LONGEST = 2000;

    private final Store store;
    private final DutyBook book;
    private final LogGuards guards;

    LogForm(Store store, DutyBook book, LocalDate today) {
        this.store = store;
        this.book = book;
        this.guards = new LogGuards(store, book, today);
    }

    EntryForm.Filled filled(JsonNode asked) {
        String kind = asked.path("kind").asText("");
        if (!Forms.entryKinds().contains(kind)) {
            throw problem(
                    Fault.CHOICE, "kind", "cannot be \"" + Located.shown(kind) + "\".", "choose one of the list.");
        }
        Map<String, String> values = new LinkedHashMap<>();
        EntryForm.COMMON.forEach(name -> values.put(name, text(asked, name)));
        Forms.entryFields(kind).forEach(f -> values.put(f.name(), text(asked.path("values"), f.name())));
        Item about = UpkeepDesk.item(store, values.get("item"));
        EntryForm.Filled filled = new EntryForm(kind, values).filled(new Judging(store, () -> book), "");
        guards.check(about, filled.draft(), asked.path("sure").asBoolean(false));
        return filled;
    }

    private static String text(JsonNode node, String name) {
        String text = node.path(name).asText("").strip();
        if (text.length() > LONGEST) {
            throw problem(
                    Fault.OTHER,
                    name,
                    "has " + text.length() + " characters; at most " + LONGEST + " are taken.",
                    "shorten it.");
        }
        return text;
    }

    static InputException problem(Fault fault, String field, String message, String maybe) {
        return new InputException(new Problem("log", 0, field, message, maybe, fault));
    }
}
