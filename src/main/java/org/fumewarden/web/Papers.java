package org.fumewarden.web;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;
import org.fumewarden.codes.InputException;
import org.fumewarden.codes.Problem;
import org.fumewarden.report.html.Speech;
import org.fumewarden.report.html.Words;
import org.fumewarden.report.upkeep.BeforeUseCard;
import org.fumewarden.report.upkeep.DueSheet;
import org.fumewarden.report.upkeep.DutyCalendar;
import org.fumewarden.report.upkeep.Paper;
import org.fumewarden.upkeep.Item;
import org.fumewarden.upkeep.LateExamination;
import org.fumewarden.upkeep.Store;

/** What the page prints or keeps as a file of the register: records, cards, lists, labels and a calendar. */
final class Papers {
    private final UpkeepDesk desk;
    private final Map<String, BiFunction<String, Words, Reply>> kinds;

    Papers(UpkeepDesk desk) {
        this.desk = desk;
        this.kinds = Map.of(
                "examination", (id, words) -> shown(store -> record(store, id, words)),
                "card", (id, words) -> shown(store -> card(store, id).html(speech(store, words))),
                "due",
                        (id, words) -> shown(
                                store -> DueSheet.html(desk.report(store, ""), desk.book(store), speech(store, words))),
                "labels", (id, words) -> shown(store -> Labels.html(labelled(store, id), words)),
                "calendar", (id, words) -> calendar(words));
    }

    boolean has(String kind) {
        return kinds.containsKey(kind);
    }

    Reply write(String kind, String id, Words words) {
        return kinds.get(kind).apply(id, words);
    }

    private Reply shown(Function<Store, String> write) {
        return Reply.styled(desk.shop().read(write::apply));
    }

    /** The record of a person holds what is the doctor's; it is not for a page that others look at. */
    private String record(Store store, String id, Words words) {
        Item item = UpkeepDesk.item(store, id);
        if (item instanceof Item.Wearer) {
            throw new InputException(new Problem(
                    "register",
                    0,
                    "item",
                    "is a person: records of health are not shown here.",
                    "the command record."));
        }
        return Paper.record(store, item, desk.book(store).duties(), desk.shop().today())
                .html(speech(store, words));
    }

    private BeforeUseCard card(Store store, String id) {
        Item item = UpkeepDesk.item(store, id);
        if (item instanceof Item.Unit unit) {
            Optional<String> late = LateExamination.of(
                            store, desk.book(store).duties(), id, desk.shop().today())
                    .against();
            return BeforeUseCard.of(unit, store.state(id), desk.book(store), late);
        }
        throw new InputException(
                new Problem("register", 0, id, "is a " + item.kind().key() + ", not a unit.", "choose a unit."));
    }

    private Speech speech(Store store, Words words) {
        return Speech.of(words, desk.book(store).wording());
    }

    private static List<Item> labelled(Store store, String id) {
        return id.isEmpty() ? store.items() : List.of(UpkeepDesk.item(store, id));
    }

    private Reply calendar(Words words) {
        String text = desk.shop()
                .read(store -> DutyCalendar.write(
                        desk.report(store, "P1Y"),
                        desk.book(store),
                        speech(store, words),
                        desk.shop().clock().instant()));
        return Reply.file("fumewarden-due.ics", "text/calendar; charset=utf-8", text);
    }
}
