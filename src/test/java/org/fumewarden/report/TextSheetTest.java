package org.fumewarden.report;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.fumewarden.cli.CommandRun;
import org.junit.jupiter.api.Test;

/** The first lines of the sheet, which are what a person in a hurry reads. */
final class TextSheetTest {
    private static final Path SCENARIOS = Path.of("scenarios");

    private static String sheet(Path task, String... more) {
        String[] arguments = new String[2 + more.length];
        arguments[0] = "advise";
        arguments[1] = task.toString();
        System.arraycopy(more, 0, arguments, 2, more.length);
        return CommandRun.of(arguments).out().replaceAll("\\s+", " ");
    }

    @Test
    void whatBarsEveryClassStandsInTheState() {
        String said = sheet(SCENARIOS.resolve("tours/stainless-brackets.yaml"), "--set", "wearer.trained=false");
        assertTrue(
                said.contains(
                        "STATE STOP. This wearer may not do this work. - The wearer is not trained in the use of a respirator"),
                said);
        assertTrue(said.contains("WEAR This person must not do this work"), said);
        assertFalse(said.contains("Possible once the questions are answered"), said);
    }

    @Test
    void aDayLongAfterTheRulesWereComparedIsSaid() {
        Path task = SCENARIOS.resolve("tours/stainless-brackets.yaml");
        String later = "The rules were compared with their documents last on 2026-11-25; later changes are not known";
        assertTrue(sheet(task, "--on", "2099-12-31").contains(later), sheet(task, "--on", "2099-12-31"));
        assertFalse(sheet(task).contains(later), sheet(task));
    }

    @Test
    void whatNoFigureCountsStandsBesideTheFactor() {
        String said = sheet(SCENARIOS.resolve("us/SHARED-MEASURE-080-judged-not.yaml"));
        assertTrue(
                said.contains("Single members of the group have limits. Find out which one it is: isocyanates"), said);
    }

    @Test
    void aNeedThatCannotBeWorkedOutIsNoLeaveToGoWithout() throws IOException {
        Path task = SCENARIOS.resolve("us/US-ACCOUNT-010-no-limit-not.yaml");
        assertTrue(Files.readString(task).contains("coating: polyurethane-paint"), "the coat whose gas has no limit");
        String said = sheet(task);
        assertTrue(
                said.contains("No value so far calls for a respirator, but part of it cannot be worked out yet."),
                said);
        assertFalse(said.contains("do not call for a respirator"), said);
    }
}
