package org.fumewarden.shift;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.fumewarden.cli.CommandRun;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What the plan of a shift knows of the battery also stands on the sheet of the task. */
final class UnitFactsTest {
    private static final String BARRED = "DO NOT USE THIS UNIT";

    /** The curve of the tour gives 6 h at the 320 Pa of the end of the shift, at 20 C, where cold takes nothing. */
    @ParameterizedTest
    @CsvSource({
        "5 h, 0, false, false",
        "6 h, 0, false, false",
        "361 min, 0, false, true",
        "8 h, 0, false, true",
        "8 h, 1, false, false",
        "8 h, 0, true, false"
    })
    void aBatteryThatDoesNotLastTheTaskBarsTheUnit(String time, int spares, boolean charged, boolean barred) {
        CommandRun run = CommandRun.of(
                "advise",
                "scenarios/tours/shift-that-lasts.yaml",
                "--set",
                "task.time-on-task=" + time,
                "--set",
                "kit.spare-packs=" + spares,
                "--set",
                "kit.charge-in-breaks=" + charged);
        assertEquals(barred, run.out().contains(BARRED), run.out());
        assertEquals(barred ? 3 : 0, run.exit(), run.err());
    }
}
