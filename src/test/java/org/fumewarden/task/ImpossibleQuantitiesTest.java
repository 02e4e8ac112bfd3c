package org.fumewarden.task;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.fumewarden.cli.CommandRun;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What cannot be is questioned before anything is concluded from it. */
final class ImpossibleQuantitiesTest {
    private static final String TOUR = "scenarios/tours/stainless-brackets.yaml";

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "atmosphere.temperature=-300 C | is colder than anything can be",
                "task.shift=0 h | is no time",
                "task.time-on-task=PT0S | is no time",
                "task.shift=25 h | is longer than a day",
                "task.week=169 h | is longer than a week",
                "atmosphere.oxygen=101 % | is above 100 %",
                "atmosphere.altitude=120 km | is higher than any place on earth",
                "kit.measured-flow=601 L/min | is more air than any respirator gives",
                "kit.minimum-design-flow=40 m3/h | is more air than any respirator gives",
                "kit.filter-opened=2099-01-01 | is after the day of the work",
                "exposures.1.twa=5 ppm | is in parts of gas, and this agent is dust or fume",
                "exposures.0.samples=[4 ppm, 5 ppm] | is in parts of gas",
                "exposures.3.stel=1000001 ppm | is more than the air itself",
                "exposures.1.twa=2000 g/m3 | has the unit",
                "exposures.1.ceiling=0.01 mg/m3 | is lower than the 8 h average of the same agent",
            })
    void isRefusedWithWords(String change, String words) {
        CommandRun run = CommandRun.of("advise", TOUR, "--set", change);
        assertEquals(2, run.exit(), run.err());
        assertTrue(run.err().contains(words), run.err());
        assertTrue(run.err().contains("\n"), run.err());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "atmosphere.temperature=-40 C",
                "kit.measured-flow=600 L/min",
                "task.shift=24 h",
                "task.week=168 h",
                "atmosphere.altitude=4500 m",
                "exposures.1.ceiling=0.09 mg/m3",
            })
    void whatCanBeIsTaken(String change) {
        CommandRun run = CommandRun.of("advise", TOUR, "--set", change);
        assertTrue(run.exit() != 2, run.err());
    }
}
