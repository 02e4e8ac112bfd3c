package org.fumewarden.web;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Period;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.fumewarden.codes.InputException;
import org.fumewarden.codes.Located;
import org.fumewarden.codes.Problem;
import org.fumewarden.duties.DutyBook;
import org.fumewarden.report.upkeep.BeforeUseCard;
import org.fumewarden.report.upkeep.DueSheet;
import org.fumewarden.report.upkeep.Paper;
import org.fumewarden.upkeep.DueList;
import org.fumewarden.upkeep.DueReport;
import org.fumewarden.upkeep.Entry;
import org.fumewarden.upkeep.Item;
import org.fumewarden.upkeep.LateExamination;
import org.fumewarden.upkeep.Store;
import org.fumewarden.whatif.Bench;

/** Answers what the page asks about units, wearers and their upkeep. */
final class UpkeepDesk {
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;
    private static final Period WARNING = Period.ofDays(7);
    private static final Map<String, Period> SPANS = Map.of(
            "P7D", Period.ofDays(7), "P30D", Period.ofDays(30), "P90D", Period.ofDays(90), "P1Y", Period.ofYears(1));

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
            UpkeepJson.owed(root, report(store, book, asked.path("within").asText("")));
            root.put("code", book.code());
            UpkeepJson.register(root, store, book);
            UpkeepJson.forms(root);
            return root;
        });
        return Reply.json(told);
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
            LogForm.Filled form = new LogForm(store, book(store, asked)).filled(asked);
            Entry entry = store.append(form.draft(), shop.clock().instant());
            ObjectNode root = NODES.objectNode();
            root.put("sequence", entry.sequence());
            root.put("item", entry.item());
            root.put("result", entry.details().result().key());
            root.put("says", form.says());
            root.put("because", store.state(entry.item()).because());
            return root;
        });
        return Reply.json(told);
    }

    /** A paper to print: the examination record or the card of an item, or the due list. */
    Reply paper(String sheet, String id) {
        Function<Store, String> write =
                switch (sheet) {
                    case "examination" ->
                        store -> Paper.record(
                                        store,
                                        item(store, id),
                                        book(store, NODES.objectNode()).duties())
                                .html();
                    case "card" -> store -> card(store, id).html();
                    case "due" -> store -> DueSheet.html(report(store, book(store, NODES.objectNode()), ""));
                    default ->
                        throw new InputException(
                                new Problem("request", 0, "", "asks for no paper.", "the links of the page."));
                };
        return Reply.styled(shop().read(write::apply));
    }

    private BeforeUseCard card(Store store, String id) {
        Item item = item(store, id);
        if (item instanceof Item.Unit unit) {
            DutyBook book = book(store, NODES.objectNode());
            Optional<String> late =
                    LateExamination.of(store, book.duties(), id, shop().today()).against();
            return BeforeUseCard.of(unit, store.state(id), book, late);
        }
        throw new InputException(
                new Problem("register", 0, id, "is a " + item.kind().key() + ", not a unit.", "choose a unit."));
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

    private Workshop shop() {
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
                        "choose one of the list, or register it first.")));
    }

    static List<String> sheets() {
        return List.of("examination", "card", "due");
    }
}
