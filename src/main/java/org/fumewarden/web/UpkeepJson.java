package org.fumewarden.web;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeSet;
import org.fumewarden.duties.DutyBook;
import org.fumewarden.model.Duty;
import org.fumewarden.report.upkeep.BeforeUseCard;
import org.fumewarden.upkeep.DueReport;
import org.fumewarden.upkeep.Forms;
import org.fumewarden.upkeep.Item;
import org.fumewarden.upkeep.ItemKind;
import org.fumewarden.upkeep.LogEntry;
import org.fumewarden.upkeep.Owing;
import org.fumewarden.upkeep.Store;
import org.fumewarden.upkeep.UnitState;

/** The register, the log and what is owed, as JSON. */
final class UpkeepJson {
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

    private UpkeepJson() {}

    static void owed(ObjectNode root, DueReport report, DutyBook book) {
        ArrayNode owings = root.putArray("owings");
        report.owings().forEach(o -> owings.add(owing(o)));
        report.doubts().forEach(root.putArray("doubts")::add);
        ArrayNode open = root.putArray("unsettled");
        report.unsettled().forEach(u -> {
            ObjectNode node = open.addObject();
            node.put("fact", u.fact());
            node.put("subject", u.subject().key());
            node.put("items", u.items());
            node.put("example", u.example());
            u.ids().forEach(node.putArray("ids")::add);
            u.duties().forEach(node.putArray("duties")::add);
            ArrayNode deeds = node.putArray("deeds");
            book.duties().stream()
                    .filter(d -> u.duties().contains(d.id()))
                    .map(Duty::doneBy)
                    .distinct()
                    .forEach(deeds::add);
        });
    }

    static ObjectNode owing(Owing owing) {
        ObjectNode node = NODES.objectNode();
        node.put("item", owing.item());
        node.put("label", owing.label());
        node.put("wearer", owing.wearer().orElse(""));
        node.put("deed", owing.doneBy());
        node.put("status", owing.status().name().toLowerCase(Locale.ROOT).replace('_', '-'));
        node.put("due", owing.due().map(LocalDate::toString).orElse(""));
        node.put("days-over", owing.daysOver());
        node.put("last", owing.last().map(LocalDate::toString).orElse(""));
        node.put("failed", owing.failed().map(LocalDate::toString).orElse(""));
        node.put("note", owing.note());
        owing.assumed().forEach(node.putArray("assumed")::add);
        ArrayNode duties = node.putArray("duties");
        for (Duty duty : owing.duties()) {
            ObjectNode each = duties.addObject();
            each.put("id", duty.id());
            each.put("what", duty.what());
            each.put("who", duty.who());
            each.put("source", duty.citation().source());
            each.put("clause", duty.citation().clause());
            each.put("force", duty.force().words());
            each.put("unverified", duty.citation().confidence().unverified());
        }
        return node;
    }

    /** Every item with its standing. */
    static void register(ObjectNode root, Store store, DutyBook book) {
        ArrayNode items = root.putArray("items");
        store.items().forEach(item -> items.add(item(store, item, book)));
    }

    /** An item with its standing, and for a unit the checks before use that its card prints. */
    static ObjectNode item(Store store, Item item, DutyBook book) {
        UnitState state = store.state(item.id());
        ObjectNode node = NODES.objectNode();
        node.put("id", item.id());
        node.put("kind", item.kind().key());
        node.put("label", item.label());
        node.put("in-service", state.inService());
        node.put("standing", state.standing().name().toLowerCase(Locale.ROOT).replace('_', '-'));
        node.put("because", state.because());
        state.since().ifPresent(day -> node.put("since", day.toString()));
        if (item instanceof Item.Wearer wearer) {
            wearer.masks().forEach(node.putArray("masks")::add);
        }
        if (item instanceof Item.Unit unit) {
            unit.minimumFlow().ifPresent(flow -> node.put("minimum-flow", flow.toPlainString()));
            ArrayNode checks = node.putArray("checks");
            BeforeUseCard.of(unit, state, book).checks().forEach(check -> {
                ObjectNode each = checks.addObject();
                each.put("id", check.id());
                each.put("name", check.name());
                each.put("unverified", check.ref().citation().confidence().unverified());
            });
        }
        return node;
    }

    /** The kinds of entry with their fields. */
    static void forms(ObjectNode root) {
        ArrayNode kinds = root.putArray("kinds");
        for (String kind : Forms.entryKinds()) {
            ObjectNode node = kinds.addObject();
            node.put("id", kind);
            ArrayNode fields = node.putArray("fields");
            for (Forms.Field field : Forms.entryFields(kind)) {
                ObjectNode each = fields.addObject();
                each.put("name", field.name());
                each.put("kind", field.kind());
                each.put("needed", field.needed());
                field.concerns().stream().map(ItemKind::key).sorted().forEach(each.putArray("concerns")::add);
            }
        }
    }

    /** The kinds of item with their fields, and the circumstances that belong to each. */
    static void itemForms(ObjectNode root, Map<String, List<String>> facts) {
        ArrayNode kinds = root.putArray("item-kinds");
        for (String kind : Forms.itemKinds()) {
            ObjectNode node = kinds.addObject();
            node.put("id", kind);
            ArrayNode fields = node.putArray("fields");
            Forms.itemFields(kind).forEach(field -> fields.addObject()
                    .put("name", field.name())
                    .put("kind", field.kind())
                    .put("needed", field.needed()));
            ArrayNode own = node.putArray("facts");
            for (ItemKind each : ItemKind.values()) {
                if (each.key().equals(kind)) {
                    new TreeSet<>(each.ownFacts()).forEach(fact -> {
                        ObjectNode asked = own.addObject().put("name", fact);
                        facts.getOrDefault(fact, List.of()).forEach(asked.putArray("values")::add);
                    });
                }
            }
        }
    }

    static ObjectNode history(Item item, Store store) {
        ObjectNode root = NODES.objectNode();
        root.put("item", item.id());
        root.put("label", item.label());
        List<Long> superseded = store.superseded(item.id());
        ArrayNode list = root.putArray("entries");
        for (LogEntry entry : store.entriesOf(item.id())) {
            ObjectNode node = NODES.objectNode();
            node.put("sequence", entry.sequence());
            node.put("on", entry.on().toString());
            node.put("by", entry.by());
            node.put("recorded", entry.recorded().toString());
            node.put("deed", entry.details().serves());
            node.put("result", entry.details().result().key());
            entry.details().corrects().ifPresent(n -> node.put("corrects", n));
            node.put("superseded", superseded.contains(entry.sequence()));
            ArrayNode parts = node.putArray("parts");
            EntryParts.shown(entry.details()).forEach((name, value) -> {
                ObjectNode part = parts.addObject();
                part.put("name", name);
                part.put("value", value);
            });
            list.insert(0, node);
        }
        return root;
    }
}
