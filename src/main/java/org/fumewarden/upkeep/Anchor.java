package org.fumewarden.upkeep;

import java.time.LocalDate;
import java.util.Optional;

/** The day from which a period counts. */
public enum Anchor implements Keyed {
    LAST_DONE("last-done"),
    LAST_USED("last-used"),
    MANUFACTURE_DATE("manufacture-date"),
    FIRST_FITTED_DATE("first-fitted-date"),
    MARKED_EXPIRY("marked-expiry"),
    RECORD_MADE("record-made"),
    LAST_ENTRY("last-entry"),
    EMPLOYMENT_END("employment-end"),
    EXPOSURE_START("exposure-start"),
    EVENT_DATE("event-date");

    private final String key;

    Anchor(String key) {
        this.key = key;
    }

    @Override
    public String key() {
        return key;
    }

    /**
     * The day of a part.
     *
     * <p>The manufacture date counts unless the first fitting is documented: BGR/GUV-R 190 (2011) section 3.3.2.
     */
    static Optional<LocalDate> ofPart(
            Anchor anchor, Optional<LocalDate> manufactured, Optional<LocalDate> firstFitted) {
        return switch (anchor) {
            case MANUFACTURE_DATE -> firstFitted.or(() -> manufactured);
            case FIRST_FITTED_DATE -> firstFitted;
            default -> Optional.empty();
        };
    }
}
