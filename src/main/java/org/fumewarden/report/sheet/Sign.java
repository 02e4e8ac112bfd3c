package org.fumewarden.report.sheet;

/** The sign before a line. Each has one meaning on every sheet, and none is told by colour. */
public enum Sign {
    /** Nothing but a line. */
    NONE("", ""),
    /** An act, to tick when it is done. */
    ACT("[ ]", "\u2610"),
    /** One of several answers, of which one is chosen. */
    CHOICE("( )", "\u25cb"),
    /** Danger: leave at once, or do not use it. */
    LEAVE("!", "!"),
    /** Still to be answered. */
    OPEN("?", "?"),
    /** One of several things of the same weight. */
    ITEM("-", "\u2013");

    private final String text;
    private final String drawn;

    Sign(String text, String drawn) {
        this.text = text;
        this.drawn = drawn;
    }

    /** The sign in plain text. */
    public String text() {
        return text;
    }

    /** The sign in HTML. */
    public String drawn() {
        return drawn;
    }
}
