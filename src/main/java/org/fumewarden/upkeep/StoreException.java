package org.fumewarden.upkeep;

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
    private final String maybe;

    StoreException(Cause reason, String message, String maybe) {
        super(message);
        this.reason = reason;
        this.maybe = maybe;
    }

    static StoreException refused(String message, String maybe) {
        return new StoreException(Cause.REFUSED, message, maybe);
    }

    public Cause reason() {
        return reason;
    }

    /** The two lines that a reader sees. */
    public String text() {
        return getMessage() + "\nMaybe " + maybe;
    }

    /** What would do, without the word "Maybe". */
    public String maybe() {
        return maybe;
    }
}
