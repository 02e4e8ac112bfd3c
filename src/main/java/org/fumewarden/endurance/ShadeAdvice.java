package org.fumewarden.endurance;

import java.util.OptionalInt;

/** The shade for an arc or a flame, or the advice to look it up. */
public sealed interface ShadeAdvice permits ShadeAdvice.Shade, ShadeAdvice.SeeStandard {

    /**
     * A shade from a cross-checked table.
     *
     * @param minimum never lighter than this
     * @param suggested for comfort, from a second table, empty when it has no row
     * @param says for the reader
     */
    record Shade(int minimum, OptionalInt suggested, String says) implements ShadeAdvice {}

    /**
     * No cross-checked figure.
     *
     * @param says why, and where to look
     */
    record SeeStandard(String says) implements ShadeAdvice {}
}
