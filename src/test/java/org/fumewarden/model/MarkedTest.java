package org.fumewarden.model;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Map;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** EN 14387 from memory: letters stand for groups of gases, a higher class holds what a lower one does, AX is no class of A. */
class MarkedTest {
    private static final Marked FITTED =
            new Marked("A1E2NO-P3", Map.of("A", 1, "E", 2, "NO", 0, "ORGANIC-VAPOUR", 0), "p3", "kit.filter-mark");

    @ParameterizedTest
    @CsvSource({
        "A1, false",
        "A1-up, true",
        "E1, false",
        "E1-up, false",
        "K1, true",
        "AX, true",
        "NO-P3, false",
        "Hg-P3, true",
        "organic vapour cartridge, false",
        "chlorine cartridge, true"
    })
    void aFilterLacksWhatItsMarkDoesNotName(String type, boolean lacks) {
        assertEquals(lacks, FITTED.lacks(new FilterNeed("gas", type)));
    }
}
