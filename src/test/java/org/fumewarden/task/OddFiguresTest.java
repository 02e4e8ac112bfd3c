package org.fumewarden.task;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.fumewarden.cli.CommandRun;
import org.fumewarden.codes.Located;
import org.fumewarden.codes.YamlFiles;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What people write in place of one figure gets a sentence of its own; none of it becomes a figure. */
class OddFiguresTest {
    private static final String TASK = "scenarios/tours/stainless-brackets.yaml";

    private static String complaint(String text, boolean level) {
        Located place = YamlFiles.parse("f", "v: \"" + text + "\"").entries().get("v");
        if (level) {
            assertTrue(Quantities.level(place).isEmpty(), text);
        } else {
            assertTrue(Quantities.amount(place, "flow").isEmpty(), text);
        }
        assertEquals(1, place.problems().size(), place.problems().toString());
        return place.problems().get(0).message();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "0.1-0.2 mg/m3 | is a range",
                "0.1 - 0.2 mg/m3 | is a range",
                "0.1 to 0.2 mg/m3 | is a range",
                "0.1 mg/m3 - 0.2 mg/m3 | is a range",
                "0.1 mg/m3 to 0.2 mg/m3 | is a range",
                "0.1\u20130.2 mg/m3 | is a range",
                "5..10 ppm | is a range",
                "5 ppm \u00b1 1 ppm | is a range",
                "0x10 mg/m3 | is not written in tens",
                "0b1 ppm | is not written in tens",
                ".5 mg/m3 | begins with a point",
                ",5 mg/m3 | begins with a point",
                "5 x 2 ppm | is a sum or a comparison",
                "<0.1 mg/m3 | is a sum or a comparison",
            })
    void aConcentration(String text, String says) {
        assertTrue(complaint(text, true).startsWith(says), complaint(text, true));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "160-180 L/min | is a range",
                "0xA0 L/min | is not written in tens",
                ".5 L/min | begins with a point",
                "much | must be a number with a unit",
            })
    void anAmount(String text, String says) {
        assertTrue(complaint(text, false).startsWith(says), complaint(text, false));
    }

    @ParameterizedTest
    @ValueSource(strings = {"1e-5 mg/m3", "0.5 mg/m3", "-5 mg/m3"})
    void aPlainFigureIsNoRange(String text) {
        Located place = YamlFiles.parse("f", "v: \"" + text + "\"").entries().get("v");
        Quantities.level(place);
        assertTrue(place.problems().stream().noneMatch(p -> p.message().contains("range")));
    }

    @ParameterizedTest
    @CsvSource({
        "PT8H, PT4H, PT8H, 0",
        "PT8H1M, PT4H, PT8H, 2",
        "PT7H59M, PT4H, PT8H, 0",
        "PT4H, PT8H, PT8H, 0",
        "PT4H, 481 min, PT8H, 2",
        "PT4H, 1 h, PT3H59M, 2",
        "PT4H, 1 h, PT4H, 0",
    })
    void nobodyWorksOrWearsLongerThanTheShift(String task, String wear, String shift, int exit) {
        CommandRun run = CommandRun.of(
                "advise",
                TASK,
                "--set",
                "task.time-on-task=" + task,
                "--set",
                "task.wear-time=" + wear,
                "--set",
                "task.shift=" + shift);
        assertEquals(exit == 2, run.exit() == 2, run.out() + run.err());
        assertEquals(exit == 2, run.err().contains("is longer than the shift"), run.err());
    }

    @ParameterizedTest
    @ValueSource(strings = {"pregnant", "age", "health", "heart-disease", "takes-medication"})
    void whatIsTheDoctorsIsSaidSo(String name) {
        CommandRun run = CommandRun.of("advise", TASK, "--set", "wearer." + name + "=true");
        assertEquals(2, run.exit(), run.out());
        assertTrue(run.err().contains("the matter of the doctor"), run.err());
        assertTrue(run.err().contains("wearer.medically-cleared"), run.err());
    }

    @Test
    void anotherUnknownNameIsNotTakenForHealth() {
        CommandRun run = CommandRun.of("advise", TASK, "--set", "wearer.spectacle=true");
        assertTrue(run.exit() == 2 && !run.err().contains("doctor"), run.err());
    }
}
