package org.fumewarden.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.fumewarden.Extent;
import org.fumewarden.advice.Advice;
import org.fumewarden.advice.Advisor;
import org.fumewarden.advice.Bench;
import org.fumewarden.advice.UnitInHand;
import org.fumewarden.codes.InputException;
import org.fumewarden.codes.Question;
import org.fumewarden.codes.RuleFolder;
import org.fumewarden.codes.Vocabulary;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/**
 * For every question with a closed list, a new one too: what is unknown offers no class, asks for no less and passes no unit that
 * one of the answers would bar, or it is asked, or it stands on the sheet as an order (issue 16, family 10). The tasks are answered
 * whole; the answers of a list come from the vocabulary.
 */
final class UnknownAnswerTest {
    /** How many answers of one list are tried. */
    private static final int ANSWERS = Extent.of(3, 20, Extent.ALL);

    private static final int TASKS = Extent.of(1, 4, 4);

    /** Told, it brings agents of its own; left out, the metal, the process and the filler decide. */
    private static final Set<String> NEWS = Set.of("consumable");

    /** The date on the filter is read at each check before use, which the sheet orders of every powered unit. */
    private static final Set<String> CHECKED_EACH_TIME =
            Set.of("filter-expired", "filter-opened-long", "battery-too-short");

    private static final String ARC = "process: mag-solid-wire, base-metal: mild-steel, filler: plain, coating: none";
    private static final String FUME =
            "{agent: welding-fume, twa: 20 mg/m3}, {agent: manganese-respirable, twa: 0.2 mg/m3}, "
                    + "{agent: manganese-inhalable, twa: 0.2 mg/m3}, {agent: carbon-monoxide, twa: 2 ppm, stel: 4 ppm}, "
                    + "{agent: ozone, twa: 0.02 ppm, stel: 0.03 ppm, ceiling: 0.03 ppm}, {agent: iron-oxide, twa: 1 mg/m3, stel: 3 mg/m3}";
    private static final String DUST = "{agent: chromium-vi, twa: 0.02 mg/m3}, {agent: chromium-iii, twa: 0.1 mg/m3}, "
            + "{agent: nickel, twa: 0.5 mg/m3}, {agent: iron-oxide, twa: 1 mg/m3}, "
            + "{agent: dust-respirable, twa: 0.3 mg/m3}, {agent: dust-inhalable, twa: 2 mg/m3}";

    private static List<String> tasks(String code) {
        String vessel =
                "vessel: on-it, vessel-held: water, vessel-cleaned: true, vessel-water-filled: false, gas-test: 0 %, "
                        + "gas-test-instrument: meter 1, gas-test-time: \"2026-11-30T08:00\"";
        return List.of(
                task(code, ARC + ", place: indoors, vessel: none", FUME, "unit-withdrawn: false"),
                task(code, ARC + ", place: confined-space, vessel: none", FUME, "unit: U1"),
                task(code, ARC + ", place: enclosed, " + vessel, FUME, "unit: U1"),
                task(
                        code,
                        "process: grinding, base-metal: stainless-steel, filler: plain, coating: none, place: indoors, vessel: none",
                        DUST,
                        "blower: true"));
    }

    private static String task(String code, String work, String air, String kit) {
        return String.join(
                "\n",
                "{title: t, code: " + code + ", on: 2026-11-30,",
                "task: {" + work + ", extraction: none, ventilation: mechanical-adequate, time-on-task: 4 h,",
                "  intensity: regular, wear-time: 1 h, shift: 8 h, work-rate: moderate, purpose: work, speech: false,",
                "  sector: general-industry, guided-by: hand, wide-view: false, movement: fixed},",
                "atmosphere: {oxygen: 20.9 %, altitude: 10 m, explosive: false, immediately-dangerous: false, oil-mist: false,",
                "  eye-irritation: false, odour: false, temperature: 20 C, degreaser-in-sight: false, raised-pressure: false},",
                "exposures: [" + air + "],",
                "wearer: {facial-hair: false, spectacles: false, fit-tested: true, fit-test-method: quantitative,",
                "  medically-cleared: true, trained: true, headgear: none},",
                "kit: {spark-arrestor: true, measured-flow: 300 L/min, minimum-design-flow: 170 L/min, check-failed: false,",
                "  examination-overdue: false, filter-expired: false, hood-evidence: true, warning-device: true, " + kit
                        + "}}");
    }

    @TestFactory
    List<DynamicTest> nothingUnknownIsMilderThanItsAnswers() {
        return RuleFolder.shipped().codes().stream()
                .map(code -> DynamicTest.dynamicTest(code, () -> {
                    Walk walk = new Walk(Advisor.shipped(code));
                    tasks(code).stream().limit(TASKS).forEach(walk::through);
                    System.out.println(code + ": " + walk.tried + " answers beside an unknown one");
                    assertTrue(walk.tried > 50, "too few answers");
                    assertEquals(List.of(), walk.milder);
                }))
                .toList();
    }

    private static final class Walk {
        final Advisor advisor;
        final List<String> milder = new ArrayList<>();
        int tried;

        Walk(Advisor advisor) {
            this.advisor = advisor;
        }

        void through(String text) {
            Bench told = Bench.ofText("task", text, id -> advisor);
            Vocabulary vocabulary = advisor.base().book().vocabulary();
            for (Question question : vocabulary.questions()) {
                if (NEWS.contains(question.id()) || CHECKED_EACH_TIME.contains(question.id())) {
                    continue;
                }
                List<String> answers =
                        switch (question.kind()) {
                            case "flag" -> List.of("true", "false");
                            case "choice" ->
                                List.copyOf(vocabulary.choices(question).keySet());
                            default -> List.of();
                        };
                if (!answers.isEmpty()) {
                    walk(told, question, Extent.sample(answers, a -> a, ANSWERS));
                }
            }
        }

        private void walk(Bench told, Question question, List<String> answers) {
            Advice unknown = told.advise(Map.of(question.path(), "unknown"));
            if (unknown.questions().stream().anyMatch(q -> q.question().equals(question.id()))
                    || Promises.isAnOrder(question.id(), unknown)) {
                return;
            }
            for (String answer : answers) {
                try {
                    tried++;
                    milder(told.advise(Map.of(question.path(), answer)), unknown)
                            .forEach(m -> milder.add(question.id() + ": unknown " + m + " " + answer));
                } catch (InputException e) {
                    // Some answers contradict the rest of the task.
                    tried--;
                }
            }
        }

        private static List<String> milder(Advice answered, Advice unknown) {
            List<String> milder = new ArrayList<>();
            Set<String> grown = Promises.suitable(unknown);
            grown.removeAll(Promises.suitable(answered));
            if (!grown.isEmpty()) {
                milder.add("offers " + grown + " beside");
            }
            if (unknown.requiredFactor()
                            .value()
                            .compareTo(answered.requiredFactor().value())
                    < 0) {
                milder.add("asks for a lower factor than");
            }
            if (answered.unit().filter(UnitInHand::barred).isPresent()
                    && unknown.unit().filter(UnitInHand::barred).isEmpty()) {
                milder.add("does not bar the unit, as does");
            }
            return milder;
        }
    }
}
