package org.fumewarden.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Levels, limits and factors against worked values of published tables. */
final class RatioTest {
    private static final RowRef REF =
            new RowRef("test", "row", new Citation("fumewarden", "test", "1", Confidence.PRACTICE));

    /** 20 degrees C and 101.325 kPa, the basis of EH40; molar gas constant of CODATA 2018. */
    private static final Threshold AT_20 = new Threshold(REF, "molar-volume", number("24.05526"), "L/mol");

    /** Mass concentrations as EH40/2005 (4th ed. 2020) Table 1 prints them beside ppm; it rounds to three figures. */
    @ParameterizedTest
    @CsvSource({
        "58.08, 500, 1210", // acetone, 8 h
        "58.08, 1500, 3620", // acetone, 15 min
        "116.16, 150, 724", // n-butyl acetate, 8 h
        "17.031, 25, 18", // ammonia, 8 h, printed to two figures
        "46.07, 1000, 1920", // ethanol, 8 h
    })
    void ppmBecomesTheMassThatTheListPrints(String molarMass, String ppm, String printed) {
        BigDecimal mass = Concentrations.convert(number(ppm), Unit.PPM, Unit.MG_M3, agent(molarMass), AT_20);
        BigDecimal rounded = mass.round(
                new java.math.MathContext(number(printed).stripTrailingZeros().precision(), RoundingMode.HALF_UP));
        assertEquals(0, rounded.compareTo(number(printed)), mass + " is not " + printed);
    }

    @Test
    void acetoneIsConvertedUnrounded() {
        // 500 x 58.08 / 24.05526 = 1207.22...; the list prints 1210.
        BigDecimal mass = Concentrations.convert(number("500"), Unit.PPM, Unit.MG_M3, agent("58.08"), AT_20);
        assertEquals("1207.2", mass.setScale(1, RoundingMode.HALF_UP).toPlainString());
    }

    @Test
    void thereAndBackIsTheSameLevel() {
        BigDecimal ppm = number("12.5");
        BigDecimal mass = Concentrations.convert(ppm, Unit.PPM, Unit.MG_M3, agent("48"), AT_20);
        BigDecimal back = Concentrations.convert(mass, Unit.MG_M3, Unit.PPM, agent("48"), AT_20);
        assertEquals(0, back.setScale(10, RoundingMode.HALF_UP).compareTo(ppm));
    }

    @Test
    void aParticleHasNoPpm() {
        Agent dust = new Agent(REF, "dust", "dust", "particle", "none", Optional.empty(), "peak-over-average");
        BigDecimal one = BigDecimal.ONE;
        assertThrows(
                IllegalArgumentException.class, () -> Concentrations.convert(one, Unit.PPM, Unit.MG_M3, dust, AT_20));
    }

    @Test
    void threeTenthsAgainstOneTenthNeedsThreeExactly() {
        // In binary floating point 0.3 / 0.1 is below 3 and 0.1 x 3 is above 0.3; decimals compare exactly.
        Need need = need("0.3", "0.1");
        assertTrue(need.heldBy(number("3")));
        assertFalse(need.heldBy(number("2.9999999")));
        assertEquals("3", need.value().toPlainString());
    }

    @Test
    void theMaximumUseConcentrationIsInclusive() {
        // OSHA, 29 CFR 1910.134(b): maximum use concentration = assigned factor x limit; lead 10 x 0.05 mg/m3 = 0.5
        // mg/m3.
        assertTrue(need("0.5", "0.05").heldBy(BigDecimal.TEN));
        assertFalse(need("0.5000001", "0.05").heldBy(BigDecimal.TEN));
    }

    @Test
    void aLevelAtItsLimitIsNotAboveIt() {
        assertFalse(need("0.05", "0.05").aboveOne());
        assertTrue(need("0.050001", "0.05").aboveOne());
        assertFalse(need("0", "0.05").aboveOne());
    }

    @Test
    void printedFactorsAreRoundedUp() {
        // 1 / 3 = 0.3333...: print never understates.
        assertEquals("0.333334", need("1", "3").value().toPlainString());
        assertTrue(need("200", "3").value().compareTo(number("66.66666")) > 0);
    }

    @Test
    void agentsWithLikeEffectAddUp() {
        // Worked by hand from the formula of 29 CFR 1910.1000(d)(2)(i): 20/50 + 90/100 = 1.3.
        Ratio first = ratio("a", "20", "50");
        Ratio second = ratio("b", "90", "100");
        Need mixture = Need.mixture("effect", List.of(first, second), List.of());
        assertEquals("1.3", mixture.value().toPlainString());
        assertTrue(mixture.aboveOne());
        assertFalse(first.exceeded());
        assertFalse(second.exceeded());
    }

    @Test
    void aMixtureAtOneIsNotAboveIt() {
        // 1/3 + 2/3 cannot be written as decimals; the sum must not creep above 1 and must not fall far below it.
        Need mixture = Need.mixture("effect", List.of(ratio("a", "1", "4"), ratio("b", "3", "4")), List.of());
        assertFalse(mixture.aboveOne());
        assertEquals("1", mixture.value().toPlainString());
    }

    /** The example of 29 CFR 1910.1000(d)(2)(ii), from memory: 500 / 1000 + 45 / 200 + 40 / 200 = 0.925, within the limit. */
    @Test
    void theMixtureOfTheRegulation() {
        Need mixture = Need.mixture(
                "effect",
                List.of(ratio("b", "500", "1000"), ratio("c", "45", "200"), ratio("d", "40", "200")),
                List.of());
        assertEquals("0.925", mixture.value().toPlainString());
        assertFalse(mixture.aboveOne());
    }

    /** By hand: gases fill 0.8 of the index, so dust of 1 has to come down to the 0.2 that they leave: 1 / 0.2 = 5. */
    @Test
    void whatAFilterLetsThroughLeavesLessRoom() {
        List<Ratio> gases = List.of(ratio("gas", "7", "10"), ratio("trace", "1", "10"));
        Need all = Need.mixture("all", List.of(ratio("dust", "1", "1"), gases.get(0), gases.get(1)), List.of());
        assertEquals(
                "5", Need.beside(all, share("0.8"), gases, List.of()).value().toPlainString());
        // Above the share only the smaller passes: (1 + 0.7) / (1 - 0.1) = 1.88889.
        Need one = Need.beside(all, share("0.79"), gases, List.of());
        assertEquals("1.88889", one.value().toPlainString());
        assertFalse(one.ofEveryClass(), "who breathes other air needs the sum alone");
        assertTrue(share("0.79").letsThrough("trace", all, gases, List.of()));
        assertFalse(share("0.79").letsThrough("gas", all, gases, List.of()));
        assertFalse(share("0.79").letsThrough("dust", all, gases, List.of()), "no dust passes");
    }

    private static Threshold share(String value) {
        return new Threshold(REF, "share", number(value), "times");
    }

    @Test
    void needsAreComparedWithoutDivision() {
        assertTrue(need("0.31", "0.1").exceeds(need("3", "1")));
        assertFalse(need("0.3", "0.1").exceeds(need("3", "1")));
    }

    @Test
    void aJudgedAgentCountsAsWhatTheJudgementSays() {
        Limit limit = new Limit(REF, "a", Averaging.TWA, number("5"), Unit.PPM, "as listed");
        assertFalse(Ratio.judged(share("1"), limit).exceeded());
        assertEquals(
                0, number("0.5").compareTo(Ratio.judged(share("0.1"), limit).level()));
    }

    @Test
    void aListThatPrintsBothUnitsIsHeldAgainstTheOneOfTheLevel() {
        // EH40/2005 Table 1, carbon monoxide: 20 ppm, 23 mg/m3. Turned into milligrams 20 ppm would be 23.29.
        Limit both = new Limit(
                REF, "a", Averaging.TWA, number("20"), Unit.PPM, "as listed", java.util.Optional.of(number("23")));
        assertEquals(number("23"), both.in(Unit.MG_M3).value());
        assertEquals(Unit.MG_M3, both.in(Unit.MG_M3).unit());
        assertEquals(both, both.in(Unit.PPM));
        Limit alone = new Limit(REF, "a", Averaging.TWA, number("20"), Unit.PPM, "as listed");
        assertEquals(alone, alone.in(Unit.MG_M3));
    }

    @Test
    void blanksAndNegativesAreRefused() {
        BigDecimal minus = number("-1");
        BigDecimal one = BigDecimal.ONE;
        assertThrows(
                IllegalArgumentException.class,
                () -> new Exposure("a", Averaging.TWA, minus, Unit.PPM, "s", false, "p"));
        assertThrows(
                IllegalArgumentException.class, () -> new Exposure(" ", Averaging.TWA, one, Unit.PPM, "s", false, "p"));
        assertThrows(IllegalArgumentException.class, () -> new Limit(REF, "a", Averaging.TWA, minus, Unit.PPM, "f"));
        assertThrows(IllegalArgumentException.class, () -> new Need("a", "ratio", one, BigDecimal.ZERO, "s"));
    }

    private static Ratio ratio(String agent, String level, String limit) {
        return new Ratio(
                agent, Averaging.TWA, number(level), number(limit), Unit.PPM, "statistic", "measured", "test#row");
    }

    private static Need need(String level, String limit) {
        return new Need("a", "ratio", number(level), number(limit), "statistic");
    }

    private static Agent agent(String molarMass) {
        return new Agent(REF, "a", "a", "gas", "none", Optional.of(number(molarMass)), "peak-over-average");
    }

    private static BigDecimal number(String text) {
        return new BigDecimal(text);
    }
}
