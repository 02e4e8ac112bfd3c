package org.fumewarden.training;

/** What became of an answer. */
public enum Verdict {
    RIGHT,
    WRONG,
    /** It cannot be read: ask again, and count it as not right when it stays so. */
    UNREAD,
    SKIPPED
}
