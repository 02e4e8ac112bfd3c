package org.fumewarden.advice;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Combined filters are written the way EN 14387 and EN 12941 mark them; where that is not known the parts are named. */
final class FilterWordsTest {
    /** EN 14387, marking: letters in the order A B E K AX SX NO Hg, then a hyphen and the particle class. */
    @Test
    void aMaskFilterIsWrittenAsOneMark() {
        assertEquals(Optional.of("A1E1-P3"), FilterWords.combined(List.of("E1", "A1"), "p3", "P3"));
        assertEquals(Optional.of("K1-P2"), FilterWords.combined(List.of("K1"), "p2", "P2"));
        assertEquals(Optional.of("A1NO-P3"), FilterWords.combined(List.of("A1", "NO-P3"), "p3", "P3"));
    }

    /** EN 12941 and EN 12942, marking; the order of the parts is from memory. */
    @Test
    void aFilterOfAPoweredUnitBearsTheClassOfTheUnit() {
        assertEquals(Optional.of("TH3 A1B1 P"), FilterWords.combined(List.of("B1", "A1"), "th3-filter", "TH3 P"));
        assertEquals(Optional.of("TM2 K1 P"), FilterWords.combined(List.of("K1"), "tm2-filter", "TM2 P"));
    }

    /** GUV-R 190 p. 32: NO and Hg only together with P3. */
    @Test
    void whereTheMarkIsNotKnownNothingIsInvented() {
        assertEquals(Optional.empty(), FilterWords.combined(List.of("NO-P3"), "p2", "P2"));
        assertEquals(Optional.empty(), FilterWords.combined(List.of("NO-P3"), "th3-filter", "TH3 P"));
        assertEquals(Optional.empty(), FilterWords.combined(List.of("A1-up"), "p3", "P3"));
        assertEquals(Optional.empty(), FilterWords.combined(List.of("organic vapour cartridge"), "he", "HE"));
        assertEquals(Optional.empty(), FilterWords.combined(List.of("A1", "A2"), "p3", "P3"));
    }
}
