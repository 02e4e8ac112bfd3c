package org.fumewarden.upkeep;

import java.time.LocalDate;

/** An entry about to be written: it has no number yet. */
public record Draft(String item, LocalDate on, String by, Details details) {
    public Draft {
        item = Given.id("item", item);
        Given.present("on", on);
        by = Given.needed("by", by);
        Given.present("details", details);
        if (details instanceof Details.Registration registration
                && !registration.item().id().equals(item)) {
            throw StoreException.refused(
                    "the entry is about \"" + item + "\" but registers \""
                            + registration.item().id() + "\".",
                    "use the same id in both places.");
        }
    }

    /** The registration of an item. */
    public static Draft registering(Item item, LocalDate on, String by) {
        return new Draft(item.id(), on, by, new Details.Registration(item));
    }
}
