package org.fumewarden.upkeep;

import java.time.Instant;
import java.time.LocalDate;
import java.util.Optional;

/**
 * One entry of the log.
 *
 * @param sequence 1 for the first entry, without gaps
 * @param item id of the item it is about
 * @param on local day on which it happened
 * @param recorded moment at which it was written down
 * @param by the person who did it
 */
public record LogEntry(long sequence, String item, LocalDate on, Instant recorded, String by, Details details) {
    public LogEntry {
        Given.needed("item", item);
        Given.present("on", on);
        Given.present("recorded", recorded);
        by = Given.needed("by", by);
        Given.present("details", details);
    }

    /** What holds now: the details themselves, or what a correction puts in their place. */
    public Optional<Details> effective() {
        return details instanceof Details.Correction correction ? correction.instead() : Optional.of(details);
    }
}
