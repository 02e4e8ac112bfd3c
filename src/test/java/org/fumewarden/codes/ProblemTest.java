package org.fumewarden.codes;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

/** What a file holds cannot take over the terminal that shows what is wrong with it. */
final class ProblemTest {
    @Test
    void charactersThatMoveTheCursorAreNotPrinted() {
        Problem problem =
                new Problem("task.yaml", 4, "becau\u0085se", "is \u009b31m no name\u2028here.", "\u007f\"because\".");
        assertEquals(
                "task.yaml:4 becau[U+0085]se is [U+009B]31m no name[U+2028]here.\n[U+007F]\"because\".",
                problem.text());
    }

    @Test
    void aNameWithoutEndIsCut() {
        assertTrue(new Problem("task.yaml", 4, "a".repeat(100_000), "is long.", "cut it.")
                        .text()
                        .length()
                < 300);
    }
}
