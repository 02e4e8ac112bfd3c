package org.fumewarden.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * The assessment index of TRGS 402 (2010 ff.) 5.2: each substance index is the shift average over its limit, the index of the
 * mixture is their sum, and 1 is kept; read in a restatement by an association of safety engineers. Worked by hand.
 */
final class IndexTest {
    private static final RowRef REF =
            new RowRef("test", "row", new Citation("fumewarden", "test", "1", Confidence.PRACTICE));
    private static final List<Member> SETS = List.of(
            new Member(REF, "one-dust-index", "dust-inhalable"),
            new Member(REF, "one-dust-index", "dust-respirable"),
            new Member(REF, "one-dust-index", "welding-fume"),
            new Member(REF, "part-of-welding-fume", "fluoride"),
            new Member(REF, "part-of-welding-fume", "manganese-respirable"),
            new Member(REF, "assessed-apart", "nickel"));

    /** Limits of TRGS 900 from memory: toluene 190, xylene 220, n-butyl acetate 300 mg/m3. */
    @Test
    void solventsAddUp() {
        Need kept = index(of("toluene", "95", "190"), of("xylene", "55", "220"), of("n-butyl-acetate", "60", "300"));
        assertEquals("0.95", kept.value().toPlainString());
        Need at = index(of("toluene", "95", "190"), of("xylene", "55", "220"), of("n-butyl-acetate", "75", "300"));
        assertFalse(at.aboveOne(), "an index of 1 is kept");
        Need above = index(of("toluene", "95", "190"), of("xylene", "55", "220"), of("n-butyl-acetate", "76", "300"));
        assertTrue(above.aboveOne());
    }

    /** TRGS 900 2.4(6), read in the same restatement: of the two fractions of dust (1.25 and 10 mg/m3) the higher index counts. */
    @Test
    void dustHasOneIndexTheHigher() {
        Ratio respirable = of("dust-respirable", "0.625", "1.25");
        assertEquals(
                "0.7",
                index(respirable, of("dust-inhalable", "7", "10")).value().toPlainString());
        assertEquals(
                "0.5",
                index(respirable, of("dust-inhalable", "4", "10")).value().toPlainString());
    }

    /** Common practice, no source: what is weighed with the fume is not counted a second time, the higher counts. */
    @Test
    void metalsInTheFumeAreNotCountedTwice() {
        Ratio manganese = of("manganese-respirable", "0.008", "0.02");
        Ratio fluoride = of("fluoride", "0.3", "1");
        Ratio ozone = of("ozone", "0.1", "1");
        assertEquals(
                "0.9",
                index(of("welding-fume", "1", "1.25"), manganese, fluoride, ozone)
                        .value()
                        .toPlainString());
        assertEquals(
                "0.8",
                index(of("welding-fume", "0.5", "1.25"), manganese, fluoride, ozone)
                        .value()
                        .toPlainString());
    }

    /** Substances with an exposure-risk relation (TRGS 910) stand apart, from memory. */
    @Test
    void carcinogensStandApart() {
        assertEquals(
                "0.5",
                index(of("nickel", "0.06", "0.006"), of("toluene", "95", "190"))
                        .value()
                        .toPlainString());
    }

    private static Need index(Ratio... ratios) {
        return Need.index("all", List.of(ratios), List.of(), SETS);
    }

    private static Ratio of(String agent, String level, String limit) {
        return new Ratio(
                agent,
                Averaging.TWA,
                new BigDecimal(level),
                new BigDecimal(limit),
                Unit.MG_M3,
                Exposure.AS_GIVEN,
                "measured",
                "test#row");
    }
}
