package org.fumewarden.codes;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Categories of characters after the Unicode Standard, chapter 4 (general category), from memory. */
final class HiddenTest {
    @ParameterizedTest
    @ValueSource(
            strings = {
                "\n", "\r", "\u001B", "\u202E", "\u2066", "\u200B", "\u00AD", "\u2028", "\uFEFF", "\u3164", "\uFE0F"
            })
    void whatIsNotSeenIsFoundAndShownByItsNumber(String hidden) {
        String number = String.format("U+%04X", (int) hidden.charAt(0));
        assertEquals(Optional.of(number), Hidden.first("a" + hidden + "b"));
        assertEquals("a[" + number + "]b", Hidden.shown("a" + hidden + "b"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"Stainless brackets", "Schweißer Müller, 3 °C", "µg/m³ — ≤ 5 %", "溶接", "сварка"})
    void ordinaryWordsOfAnyScriptPass(String words) {
        assertTrue(Hidden.first(words).isEmpty());
        assertEquals(words, Hidden.shown(words));
    }

    @Test
    void wordsInQuotesEndWhereThePersonEnded() {
        assertEquals("\"ok'. Signed.\"", Hidden.quoted("ok\". Signed."));
    }
}
