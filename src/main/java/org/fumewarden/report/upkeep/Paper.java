package org.fumewarden.report.upkeep;

import java.time.LocalDate;
import java.util.List;
import org.fumewarden.model.Duty;
import org.fumewarden.report.html.Speech;
import org.fumewarden.upkeep.Item;
import org.fumewarden.upkeep.Store;

/** What is printed about one item of the register. */
public sealed interface Paper permits BeforeUseCard, DutyRecord, ExaminationRecord {
    /**
     * The records of an item: the examinations of a unit or mask, else what the duties ask to be kept.
     *
     * @param duties those of the code
     * @param day on which they are read
     */
    static Paper record(Store store, Item item, List<Duty> duties, LocalDate day) {
        return item instanceof Item.Unit || item instanceof Item.Mask
                ? ExaminationRecord.of(store, item, duties, day)
                : DutyRecord.of(store, item, duties, day);
    }

    RegisterSheet sheet(Speech speech);

    default String text(Speech speech) {
        return sheet(speech).text();
    }

    default String html(Speech speech) {
        return sheet(speech).html();
    }

    String csv();

    /** True when nothing that the paper should hold is lacking, and the item is open for use. */
    boolean whole();
}
