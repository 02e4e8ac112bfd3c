package org.fumewarden.web;

import com.fasterxml.jackson.databind.JsonNode;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.fumewarden.codes.InputException;
import org.fumewarden.codes.Located;
import org.fumewarden.codes.Problem;
import org.fumewarden.duties.DutyBook;
import org.fumewarden.duties.Judging;
import org.fumewarden.upkeep.Details;
import org.fumewarden.upkeep.Draft;
import org.fumewarden.upkeep.Forms;
import org.fumewarden.upkeep.Item;
import org.fumewarden.upkeep.Store;
import org.fumewarden.upkeep.StoreException;

/** Turns the log form of the page into a draft, with a complaint for the field that cannot be. */
final class LogForm {
    private static final int LONGEST = 2000;
    private static final List<String> COMMON = List.of("item", "on", "by", "corrects", "corrects-because", "reason");

    private final Store store;
    private final DutyBook book;
    private final LogGuards guards;

    LogForm(Store store, DutyBook book, LocalDate today) {
        this.store = store;
        this.book = book;
        this.guards = new LogGuards(store, book, today);
    }

    /**
     * What goes into the log.
     *
     * @param says how it was judged; empty when there was nothing to judge
     */
    record Filled(Draft draft, String says) {}

    Filled filled(JsonNode asked) {
        String kind = asked.path("kind").asText("");
        if (!Forms.entryKinds().contains(kind)) {
            throw problem("kind", "cannot be \"" + Located.shown(kind) + "\".", "choose one of the list.");
        }
        Map<String, String> values = new LinkedHashMap<>();
        for (Forms.Field field : Forms.entryFields(kind)) {
            values.put(field.name(), text(asked.path("values"), field.name()));
        }
        String item = text(asked, "item");
        Item about = UpkeepDesk.item(store, item);
        try {
            Judging.Judged judged = new Judging(store, () -> book).of(kind, item, values);
            Details details = judged.details();
            String corrects = text(asked, "corrects");
            if (!corrects.isEmpty()) {
                details =
                        new Details.Correction(number(corrects), text(asked, "corrects-because"), Optional.of(details));
            }
            Draft draft = new Draft(item, Forms.day("on", text(asked, "on")), text(asked, "by"), details);
            guards.check(about, draft, asked.path("sure").asBoolean(false));
            return new Filled(draft, judged.says());
        } catch (StoreException e) {
            throw named(kind, e);
        }
    }

    /** The complaint of the store begins with the field it is about. */
    private static InputException named(String kind, StoreException e) {
        List<String> names = new ArrayList<>(COMMON);
        Forms.entryFields(kind).forEach(f -> names.add(f.name()));
        String field = names.stream()
                .filter(n -> e.getMessage().startsWith(n + " "))
                .max(Comparator.comparingInt(String::length))
                .orElse("");
        String message = field.isEmpty() ? e.getMessage() : e.getMessage().substring(field.length() + 1);
        return problem(field, message, e.remedy());
    }

    private static long number(String text) {
        if (text.matches("[0-9]{1,15}")) {
            return Long.parseLong(text);
        }
        throw problem(
                "corrects", "is no number of an entry: \"" + Located.shown(text) + "\".", "take it from the history.");
    }

    private static String text(JsonNode node, String name) {
        String text = node.path(name).asText("").strip();
        if (text.length() > LONGEST) {
            throw problem(
                    name, "has " + text.length() + " characters; at most " + LONGEST + " are taken.", "shorten it.");
        }
        return text;
    }

    private static InputException problem(String field, String message, String maybe) {
        return new InputException(new Problem("log", 0, field, message, maybe));
    }
}
