package org.fumewarden.task;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.fumewarden.cli.CommandRun;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A limit that the officer states counts with its document only, and never makes the advice milder. */
final class StatedLimitTest {
    private static final String TOUR = "scenarios/tours/stainless-brackets.yaml";
    private static final String NICKEL = "exposures.1.";

    private static CommandRun advise(String... changes) {
        List<String> args = new ArrayList<>(List.of("advise", TOUR, "--format", "json"));
        for (String change : changes) {
            args.addAll(List.of("--set", NICKEL + change));
        }
        return CommandRun.of(args.toArray(String[]::new));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "limit-twa=0.1 mg/m3 | limit-twa stands without limit-from",
                "limit-from=the list of the yard | names limit-from, but no limit",
                "limit-none=2026-03-01 | limit-none stands without limit-from",
            })
    void oneHalfIsRefused(String change, String words) {
        CommandRun run = advise(change);
        assertEquals(2, run.exit(), run.out());
        assertTrue(run.err().contains(words), run.err());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "0 mg/m3 | is no limit",
                "1 ppm | is in parts of gas",
                "1,200 mg/m3 | cannot be read for certain",
            })
    void whatCannotBeALimitIsRefused(String limit, String words) {
        CommandRun run = advise("limit-twa=" + limit, "limit-from=the list of the yard");
        assertEquals(2, run.exit(), run.out());
        assertTrue(run.err().contains(words), run.err());
    }

    @Test
    void aLookUpThatFoundNoneHasADayUpToThatOfTheTaskAndLiftsNoLimitThatIsHeld() {
        CommandRun later = advise("limit-none=2026-03-03", "limit-from=the list of the yard");
        assertEquals(2, later.exit(), later.out());
        assertTrue(later.err().contains("is after the day of the task"), later.err());
        CommandRun none = advise("limit-none=2026-03-01", "limit-from=the list of the yard");
        assertTrue(none.out().contains("\"value\":20"), none.err());
    }

    @Test
    void aStricterLimitRaisesTheNeedAndAMilderOneChangesNothing() {
        // 0.09 mg/m3 of nickel: 0.09 / 0.001 = 90 by the stated limit, 0.09 / 0.5 = 0.18 by the one that is held. It
        // adds to
        // the 9.3472 of chromium(VI), a lung carcinogen too.
        assertTrue(factor("0.001 mg/m3").contains("\"value\":99.3472"), factor("0.001 mg/m3"));
        assertTrue(factor("50 mg/m3").contains("\"value\":20"), factor("50 mg/m3"));
    }

    private static String factor(String limit) {
        CommandRun run = advise("limit-twa=" + limit, "limit-from=the list of the yard");
        return run.out()
                .lines()
                .filter(l -> l.contains("\"required-factor\""))
                .findFirst()
                .orElse(run.err());
    }
}
