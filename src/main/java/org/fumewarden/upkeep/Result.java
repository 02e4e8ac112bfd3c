package org.fumewarden.upkeep;

import com.fasterxml.jackson.annotation.JsonValue;

/** What came out of a check. */
public enum Result implements Keyed {
    PASSED("passed"),
    FAILED("failed"),
    /** Done, and not judged for want of figures: it discharges nothing and opens nothing. */
    OPEN("open"),
    /** A deed that cannot fail, such as a repair. */
    DONE("done"),
    /** Taken out of use. */
    WITHDRAWN("withdrawn"),
    /** An earlier entry was entered by mistake and nothing takes its place. */
    VOID("void");

    private final String key;

    Result(String key) {
        this.key = key;
    }

    @Override
    @JsonValue
    public String key() {
        return key;
    }

    static Result ofCheck(String field, Result result) {
        if (Given.present(field, result) != PASSED && result != FAILED) {
            throw StoreException.refused(field + " cannot be \"" + result.key + "\".", "write passed or failed.");
        }
        return result;
    }
}
