package org.fumewarden.endurance;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.fumewarden.model.Reckoning;
import org.fumewarden.model.Soundness;
import org.junit.jupiter.api.Test;

/** Properties over random agents, flows and humidities; the seed is fixed so that a failure repeats. */
class ChangeTimeHonestyTest {
    private static final int CASES = 20_000;

    @Test
    void changeTimeNeverExceedsAnyBound() {
        Random random = new Random(14387);
        int given = 0;
        for (int i = 0; i < CASES; i++) {
            Case each = Case.draw(random);
            List<Reckoning<TimeBound>> bounds = each.bounds();
            Optional<ChangeTime> time = ChangeSchedule.shortest(bounds).value();
            if (time.isPresent()) {
                given++;
                bounds.forEach(outcome -> outcome.value()
                        .ifPresent(bound ->
                                assertTrue(time.get().minutes() <= bound.minutes(), () -> each + " " + bound)));
            }
        }
        assertTrue(given > CASES / 20, "too few cases gave a time to prove anything: " + given);
    }

    @Test
    void harderUseNeverGivesMoreTime() {
        Random random = new Random(1994);
        int compared = 0;
        for (int i = 0; i < CASES; i++) {
            Case easy = Case.draw(random);
            Case hard = easy.harder(random);
            Optional<ChangeTime> before = ChangeSchedule.shortest(easy.bounds()).value();
            Optional<ChangeTime> after = ChangeSchedule.shortest(hard.bounds()).value();
            assertTrue(
                    before.isPresent() || after.isEmpty(),
                    () -> "harder use got a time where the easier had none: " + easy);
            if (before.isPresent() && after.isPresent()) {
                compared++;
                assertTrue(
                        after.get().minutes() <= before.get().minutes(),
                        () -> easy + " " + before + "\n" + hard + " " + after);
            }
        }
        assertTrue(compared > CASES / 20, "too few pairs: " + compared);
    }

    @Test
    void everyOutcomeIsAFiniteTimeOrASentence() {
        Random random = new Random(84);
        double[] odd = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY, -1, 0, 1e300, 1e-300};
        for (int i = 0; i < CASES; i++) {
            Case drawn = Case.draw(random);
            double bad = odd[random.nextInt(odd.length)];
            Case each =
                    switch (random.nextInt(4)) {
                        case 0 -> new Case(drawn.vapour(), bad, drawn.exit(), drawn.flow(), 50, 20);
                        case 1 -> new Case(drawn.vapour(), drawn.ppm(), bad, drawn.flow(), 50, 20);
                        case 2 -> new Case(drawn.vapour(), drawn.ppm(), drawn.exit(), bad, 50, 20);
                        default -> new Case(drawn.vapour(), drawn.ppm(), drawn.exit(), drawn.flow(), bad, bad);
                    };
            each.bounds()
                    .forEach(outcome -> assertTrue(
                            outcome.value()
                                    .map(bound -> Double.isFinite(bound.minutes()))
                                    .orElse(true),
                            each::toString));
        }
    }

    private record Case(String vapour, double ppm, double exit, double flow, double humidity, double temperature) {
        private static final List<String> AGENTS = Tables.rows("adsorbed-vapours").stream()
                .map(row -> (String) row.get("id"))
                .toList();
        private static final AdsorptionModel MODEL = Tables.model();
        private static final TestCapacity A2 = Tables.test("A2", "cyclohexane");
        private static final Vapour CYCLOHEXANE = Tables.vapour("cyclohexane");
        private static final RuleOfThumb THUMB = Tables.ruleOfThumb();
        private static final Reckoning<TimeBound> SHIFT =
                Tables.useTime("one-shift").bound();
        private static final CarbonBed BED = new CarbonBed.Measured(150, 0.45, 80);

        static Case draw(Random random) {
            double ppm = Math.pow(10, 3.2 * random.nextDouble());
            return new Case(
                    AGENTS.get(random.nextInt(AGENTS.size())),
                    ppm,
                    ppm * (0.01 + 0.3 * random.nextDouble()),
                    10 + 240 * random.nextDouble(),
                    80 * random.nextDouble(),
                    5 + 30 * random.nextDouble());
        }

        Case harder(Random random) {
            double f = 1 + random.nextDouble();
            return switch (random.nextInt(4)) {
                case 0 -> new Case(vapour, ppm * f, exit, flow, humidity, temperature);
                case 1 -> new Case(vapour, ppm, exit / f, flow, humidity, temperature);
                case 2 -> new Case(vapour, ppm, exit, flow * f, humidity, temperature);
                default -> new Case(vapour, ppm, exit, flow, Math.min(100, humidity * f), temperature);
            };
        }

        List<Reckoning<TimeBound>> bounds() {
            Vapour agent = Tables.vapour(vapour);
            GasUse use = new GasUse(ppm, exit, FilterFlow.ofBlower(flow, 1), humidity, temperature, false, false);
            List<Reckoning<TimeBound>> bounds = new ArrayList<>();
            bounds.add(SHIFT);
            bounds.add(MODEL.bound(agent, BED, use));
            bounds.add(THUMB.bound(agent.boilingPoint(), use));
            bounds.add(
                    ppm > 0 && Double.isFinite(ppm) && temperature > -50 && temperature < 200
                            ? TestCapacityBound.bound(
                                    A2, use, MODEL.heldLike(agent, ppm, temperature, CYCLOHEXANE, A2), false)
                            : Reckoning.refuse(Soundness.INVALID_VALUE, "no isotherm", "none"));
            return bounds;
        }
    }
}
