package org.fumewarden.upkeep;

import com.fasterxml.jackson.annotation.JsonValue;
import org.fumewarden.model.Keyed;

/** What came out of a check. */
public enum Result implements Keyed {
    PASSED,
    FAILED,
    /** Done, and not judged for want of figures: it discharges nothing and opens nothing. */
    OPEN,
    /** A deed that cannot fail, such as a repair. */
    DONE,
    /** Taken out of use. */
    WITHDRAWN,
    /** An earlier entry was entered by mistake and nothing takes its place. */
    VOID;

    @Override
    @JsonValue
    public String key() {
        return Keyed.super.key();
    }

    /**
     * The outcome of a check as a person gives it.
     *
     * @throws StoreException when it is neither passed nor failed
     */
    public static Result ofCheck(String field, Result result) {
        if (Given.present(field, result) != PASSED && result != FAILED) {
            throw StoreException.about(field, "cannot be \"" + result.key() + "\".", "write passed or failed.");
        }
        return result;
    }
}
