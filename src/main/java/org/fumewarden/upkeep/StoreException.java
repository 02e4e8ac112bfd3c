package org.fumewarden.upkeep;

import org.apache.commons.lang3.StringUtils;
import org.fumewarden.codes.Fault;

/** Something the store cannot do, in words a person can act on. */
public final class StoreException extends RuntimeException {
    /** Why the store refused. */
    public enum Cause {
        /** What was asked for is wrong. */
        REFUSED,
        /** The disk or the file is full; nothing was written. */
        FULL,
        /** Another writer held the store too long; nothing was written. */
        BUSY,
        /** The file may be read but not written. */
        READ_ONLY,
        /** The file is damaged or is no store. */
        DAMAGED,
        /** The file does not exist. */
        MISSING,
        /** Any other fault of the disk or the database. */
        FAULT
    }

    private final Cause reason;
    private final String field;
    private final String remedy;
    private Fault fault = Fault.OTHER;

    StoreException(Cause reason, String message, String remedy) {
        this(reason, "", message, remedy);
    }

    private StoreException(Cause reason, String field, String message, String remedy) {
        super(message);
        this.reason = reason;
        this.field = field;
        this.remedy = StringUtils.capitalize(remedy);
    }

    static StoreException refused(String message, String remedy) {
        return new StoreException(Cause.REFUSED, message, remedy);
    }

    /** A field of a form that cannot be what it is; the message goes on after its name. */
    static StoreException about(String field, String message, String remedy) {
        return new StoreException(Cause.REFUSED, field, message, remedy);
    }

    /** This one, as a fault of a kind. */
    StoreException as(Fault kind) {
        fault = kind;
        return this;
    }

    /** What kind of fault it is. */
    public Fault fault() {
        return fault;
    }

    public Cause reason() {
        return reason;
    }

    /** The field that the message is about; empty when it is about none. */
    public String field() {
        return field;
    }

    /** What is wrong, after the name of its field. */
    public String saying() {
        return super.getMessage();
    }

    @Override
    public String getMessage() {
        return field.isEmpty() ? saying() : field + " " + saying();
    }

    /** The two lines that a reader sees. */
    public String text() {
        return getMessage() + "\n" + remedy;
    }

    /** What would do. */
    public String remedy() {
        return remedy;
    }
}
