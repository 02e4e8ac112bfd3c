package org.fumewarden.exposure;

import static org.fumewarden.exposure.AirVectors.need;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.Random;
import org.fumewarden.exposure.Workplace.Place;
import org.junit.jupiter.api.Test;

class ScreeningTest {
    private static final double STEADY = 1e7;

    private static FumeSource exact(double milligramsPerSecond, double arc) {
        return FumeSource.ofRate(Spread.exactly(milligramsPerSecond), Spread.exactly(arc));
    }

    private static Workplace shop(double airflow, double exchange) {
        return new Workplace(Spread.exactly(airflow), 540, Spread.exactly(exchange), 0.6);
    }

    @Test
    void thePublishedShopGivesItsSteadyStates() {
        // Shop 12 x 9 x 5 m with 54 m3/min: Hewett, Synergist April 2017. Rate 2 mg/s: TRGS 528 Table 2. Arc 30 %.
        FumeSource source = exact(2, 0.3);
        assertEquals(36, source.milligramsPerMinute().median(), 1e-9);
        // Far 36/54 = 0.667; near 0.667 + 36/6 = 6.667 with exchange 6 m3/min (two-box range, IST)
        assertEquals(
                0.6667,
                need(Screening.of(source, shop(54, 6), Place.ELSEWHERE, STEADY).percentile(0.5)),
                1e-3);
        assertEquals(
                6.6667,
                need(Screening.of(source, shop(54, 6), Place.AT_THE_ARC, STEADY).percentile(0.5)),
                1e-3);
    }

    @Test
    void theUnitedStatesDilutionRateLeavesTheRoomAboveTwo() {
        // 18.4 g/kg (AP-42 E7018) at 1.5 kg per arc hour is 7.67 mg/s; x 60 x 0.3 = 138 mg/min; / 57 m3/min = 2.42
        // mg/m3
        FumeSource source = FumeSource.ofConsumable(Spread.exactly(18.4), Spread.exactly(1.5), Spread.exactly(0.3));
        assertEquals(138, source.milligramsPerMinute().median(), 1e-9);
        assertEquals(
                2.42,
                need(Screening.of(source, shop(57, 11), Place.ELSEWHERE, STEADY).percentile(0.5)),
                5e-3);
    }

    @Test
    void manganeseOfTheElectrodeIsItsShareOfTheFume() {
        // 1000 kg of E7018: 18.4 kg fume, 1.03 kg manganese (AP-42 factors)
        FumeSource manganese = exact(10, 1).share(Spread.exactly(1.03 / 18.4));
        assertEquals(600 * 1.03 / 18.4, manganese.milligramsPerMinute().median(), 1e-9);
    }

    @Test
    void unverifiedExtractionTakesAboutHalfAndSaysSo() {
        FumeSource half = exact(10, 1).extracted(0.4, 0.5);
        assertEquals(600 * Math.sqrt(0.5 * 0.6), half.milligramsPerMinute().median(), 1e-9);
        assertTrue(
                half.assumptions().get(1).contains("0.5 to 0.6"),
                half.assumptions().toString());
        assertEquals(600, exact(10, 1).extracted(0, 0).milligramsPerMinute().median(), 1e-9);
        assertThrows(IllegalArgumentException.class, () -> exact(10, 1).extracted(0.5, 1));
    }

    @Test
    void aRangeIsReadAsItsCentralNinetyPerCent() {
        Spread spread = Spread.between(2, 12);
        assertEquals(2, spread.quantile(0.05), 1e-12);
        assertEquals(12, spread.quantile(0.95), 1e-12);
        assertEquals(Math.sqrt(24), spread.median(), 1e-12);
    }

    @Test
    void theDistributionAgreesWithRandomDraws() {
        FumeSource source = FumeSource.ofRate(Spread.between(2, 12), Spread.between(0.2, 0.6));
        Workplace room = new Workplace(Spread.between(10, 80), 540, Spread.between(3, 22), 0.6);
        Screening found = Screening.of(source, room, Place.AT_THE_ARC, 90);
        Random random = new Random(528);
        double[] draws = new double[100_000];
        double sum = 0;
        for (int i = 0; i < draws.length; i++) {
            double flow = room.airflow().median() * Math.exp(room.airflow().deviationLog() * random.nextGaussian());
            double exchange =
                    room.exchange().median() * Math.exp(room.exchange().deviationLog() * random.nextGaussian());
            Spread rate = source.milligramsPerMinute();
            double generation = rate.median() * Math.exp(rate.deviationLog() * random.nextGaussian());
            draws[i] = generation * room.averagePerRate(flow, exchange, Place.AT_THE_ARC, 90);
            sum += draws[i];
        }
        Arrays.sort(draws);
        // 100 000 draws: one standard error of the 95th percentile is near 0.7 % here.
        assertEquals(draws[50_000], need(found.percentile(0.5)), 0.02 * draws[50_000]);
        assertEquals(draws[95_000], need(found.percentile(0.95)), 0.03 * draws[95_000]);
        assertEquals(sum / draws.length, need(found.mean()), 0.02 * sum / draws.length);
        assertEquals(0.95, found.below(draws[95_000]), 0.005);
    }

    @Test
    void restOfTheShiftIsUnexposedOnlyWhenKnown() {
        Screening task = Screening.of(exact(2, 0.3), shop(54, 6), Place.AT_THE_ARC, 240);
        double all = need(task.governing());
        assertEquals(all / 2, need(task.over(240, 480, true).governing()), 1e-9 * all);
        assertEquals(all, need(task.over(240, 480, false).governing()), 1e-9 * all);
        assertEquals(all * 1.5, need(task.over(720, 480, false).governing()), 1e-9 * all);
    }

    @Test
    void theSentenceStatesSpreadAndThatNothingWasMeasured() {
        Screening found = Screening.of(
                FumeSource.ofRate(Spread.between(2, 12), Spread.between(0.2, 0.6)), shop(54, 6), Place.AT_THE_ARC, 240);
        assertTrue(found.sentence().startsWith("Estimated, not measured"), found.sentence());
        assertTrue(found.sentence().contains("geometric standard deviation"), found.sentence());
        assertTrue(found.assumptions().stream().anyMatch(a -> a.contains("helmet")));
        assertTrue(Screening.QUESTION.startsWith("Measure this"));
        assertEquals(need(found.percentile(0.95)), need(found.governing()));
    }

    @Test
    void moreFumeLessAirOrLessExchangeNeverLowersTheEstimate() {
        double base = need(
                Screening.of(exact(2, 0.3), shop(54, 6), Place.AT_THE_ARC, 60).governing());
        assertTrue(need(Screening.of(exact(3, 0.3), shop(54, 6), Place.AT_THE_ARC, 60)
                        .governing())
                > base);
        assertTrue(need(Screening.of(exact(2, 0.3), shop(20, 6), Place.AT_THE_ARC, 60)
                        .governing())
                > base);
        assertTrue(need(Screening.of(exact(2, 0.3), shop(54, 3), Place.AT_THE_ARC, 60)
                        .governing())
                > base);
        assertTrue(need(Screening.of(exact(2, 0.3), shop(54, 6), Place.AT_THE_ARC, 240)
                        .governing())
                > base);
    }
}
