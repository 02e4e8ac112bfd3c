package org.fumewarden.web;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Period;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.fumewarden.advice.Bench;
import org.fumewarden.codes.Fault;
import org.fumewarden.codes.InputException;
import org.fumewarden.codes.Located;
import org.fumewarden.codes.Problem;
import org.fumewarden.duties.DutyBook;
import org.fumewarden.duties.EntryForm;
import org.fumewarden.duties.Vocabularies;
import org.fumewarden.report.html.Speech;
import org.fumewarden.report.html.Words;
import org.fumewarden.upkeep.Draft;
import org.fumewarden.upkeep.DueList;
import org.fumewarden.upkeep.DueReport;
import org.fumewarden.upkeep.Item;
import org.fumewarden.upkeep.LogEntry;
import org.fumewarden.upkeep.Store;

/** Answers what the page asks about units, wearers and their upkeep. */
final class UpkeepDesk {
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;
    private static final Period WARNING = Period.ofDays(7);
    private static final Map<String, Period> SPANS = Map.of(
            "P7D", Period.ofDays(7), "P30D", Period.ofDays(30), "P90D", Period.ofDays(90), "P1Y", Period.ofYears(1));

    private static final List<String> SAID = List.of("because", "note", "what", "says");

    private final Library library;
    private final Optional<Workshop> workshop;

    UpkeepDesk(Library library, Optional<Workshop> workshop) {
        this.library = library;
        this.workshop = workshop;
    }

    /** The bench with what the register says of its task; without a store the bench alone. */
    Bench inUse(Bench bench) {
        return workshop.map(shop -> shop.inUse(bench)).orElse(bench);
    }

    /** What is owed, what is registered, and the forms of the log; without a store only that there is none. */
    Reply due(JsonNode asked) {
        ObjectNode root = NODES.objectNode();
        root.put("open", workshop.isPresent());
        if (workshop.isEmpty()) {
            return Reply.json(root);
        }
        root.put("file", workshop.get().file().getFileName().toString());
        root.put("today", workshop.get().today().toString());
        ObjectNode told = shop().read(store -> {
            DutyBook book = book(store, asked);
            UpkeepJson.owed(root, report(store, book, asked.path("within").asText("")), book);
            root.put("code", book.code());
            UpkeepJson.register(root, store, book);
            UpkeepJson.forms(root);
            UpkeepJson.itemForms(root, Vocabularies.shipped(shop().today()).facts());
            return root;
        });
        return said(told, asked);
    }

    /** Everything the log says about an item, newest first. */
    Reply history(JsonNode asked) {
        ObjectNode told = shop().read(store -> {
            Item item = item(store, asked.path("item").asText(""));
            return UpkeepJson.history(item, store);
        });
        return Reply.json(told);
    }

    /** Writes one entry; what is wrong with it is said for its field. */
    Reply log(JsonNode asked) {
        Workshop shop = shop();
        ObjectNode told = shop.write(store -> {
            EntryForm.Filled form = new LogForm(store, book(store, asked), shop.today()).filled(asked);
            LogEntry entry = store.append(form.draft(), shop.clock().instant());
            ObjectNode root = NODES.objectNode();
            root.put("sequence", entry.sequence());
            root.put("item", entry.item());
            root.put("result", entry.details().result().key());
            root.put("says", form.says());
            root.put("because", store.state(entry.item()).because());
            return root;
        });
        return said(told, asked);
    }

    /** One item alone: its state, what is due for it, and the points of its check. */
    Reply item(JsonNode asked) {
        ObjectNode told = shop().read(store -> {
            Item item = item(store, asked.path("item").asText("").strip());
            DutyBook book = book(store, asked);
            ObjectNode root = NODES.objectNode();
            root.put("today", shop().today().toString());
            root.set("item", UpkeepJson.item(store, item, book));
            DueReport all = report(store, book, "P1Y");
            ArrayNode owings = root.putArray("owings");
            all.owings().stream().filter(o -> o.item().equals(item.id())).forEach(o -> owings.add(UpkeepJson.owing(o)));
            return root;
        });
        return said(told, asked);
    }

    /** What the log and the tables say, in the language of the page. */
    private static Reply said(ObjectNode root, JsonNode asked) {
        Words words = Desk.language(asked);
        if (!words.ofRuleBase()) {
            Speech speech = Speech.of(words, Map.of());
            SAID.forEach(field -> root.findParents(field).forEach(n -> say(n, field, speech)));
            root.findValues("checks").forEach(checks -> checks.forEach(n -> say(n, "name", speech)));
        }
        return Reply.json(root);
    }

    private static void say(JsonNode node, String field, Speech speech) {
        String english = node.path(field).asText();
        if (!english.startsWith("never")) {
            ((ObjectNode) node).put(field, speech.told(english));
        }
    }

    /** Puts an item into the register, or changes one when that is wanted. */
    Reply register(JsonNode asked) {
        Workshop shop = shop();
        ObjectNode told = shop.write(store -> {
            Draft draft = new RegisterForm(store, shop.today()).filled(asked);
            LogEntry entry = store.append(draft, shop.clock().instant());
            return NODES.objectNode().put("sequence", entry.sequence()).put("item", entry.item());
        });
        return Reply.json(told);
    }

    DueReport report(Store store, String within) {
        return report(store, book(store, NODES.objectNode()), within);
    }

    DutyBook book(Store store) {
        return book(store, NODES.objectNode());
    }

    private DueReport report(Store store, DutyBook book, String within) {
        Workshop shop = shop();
        Period span = SPANS.getOrDefault(within, SPANS.get("P30D"));
        return new DueList(store, book.duties(), shop.today(), WARNING)
                .compute(Map.of(), Optional.of(shop.today().plus(span)));
    }

    private DutyBook book(Store store, JsonNode asked) {
        return shop().duties(store, library, asked.path("code").asText(""));
    }

    Workshop shop() {
        return workshop.orElseThrow(() -> new InputException(
                new Problem("store", 0, "", "is not open.", "start the page with: fumewarden serve --store FILE")));
    }

    static Item item(Store store, String id) {
        return store.item(id)
                .orElseThrow(() -> new InputException(new Problem(
                        "register",
                        0,
                        "item",
                        "is not in the register: \"" + Located.shown(id) + "\".",
                        "choose one of the list, or register it first.",
                        Fault.UNKNOWN)));
    }
}
