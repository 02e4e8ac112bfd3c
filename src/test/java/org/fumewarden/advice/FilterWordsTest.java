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
        assertEquals(Optional.of("A1E1-P3"), new FilterWords(List.of("E1", "A1")).combined("p3", "P3"));
        assertEquals(Optional.of("K1-P2"), new FilterWords(List.of("K1")).combined("p2", "P2"));
        assertEquals(Optional.of("A1NO-P3"), new FilterWords(List.of("A1", "NO-P3")).combined("p3", "P3"));
    }

    /** EN 12941 and EN 12942, marking; the order of the parts is from memory. */
    @Test
    void aFilterOfAPoweredUnitBearsTheClassOfTheUnit() {
        assertEquals(Optional.of("TH3 A1B1 P"), new FilterWords(List.of("B1", "A1")).combined("th3-filter", "TH3 P"));
        assertEquals(Optional.of("TM2 K1 P"), new FilterWords(List.of("K1")).combined("tm2-filter", "TM2 P"));
    }

    /** GUV-R 190 p. 32: NO and Hg only together with P3. */
    @Test
    void whereTheMarkIsNotKnownNothingIsInvented() {
        assertEquals(Optional.empty(), new FilterWords(List.of("NO-P3")).combined("p2", "P2"));
        assertEquals(Optional.empty(), new FilterWords(List.of("NO-P3")).combined("th3-filter", "TH3 P"));
        assertEquals(Optional.empty(), new FilterWords(List.of("A1-up")).combined("p3", "P3"));
        assertEquals(Optional.empty(), new FilterWords(List.of("organic vapour cartridge")).combined("he", "HE"));
        assertEquals(Optional.empty(), new FilterWords(List.of("A1", "A2")).combined("p3", "P3"));
    }
}
