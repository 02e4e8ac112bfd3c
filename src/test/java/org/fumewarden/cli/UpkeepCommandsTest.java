package org.fumewarden.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedReader;
import java.io.PrintWriter;
import java.io.StringReader;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.lang3.StringUtils;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The commands of the register and the log, as a person at a shell meets them. */
final class UpkeepCommandsTest extends UpkeepAtAShell {
    @Test
    void aUnitIsRegisteredExaminedAndFallsDueAMonthLater() {
        assertEquals(0, examined("2026-01-31", "171"));
        // 31 January and a month: 28 February 2026.
        assertEquals(
                0,
                run(
                        new DueCommand(),
                        "--on",
                        "2026-02-28",
                        "--format",
                        "csv",
                        "--fact",
                        "agent=none",
                        "--fact",
                        "confined-space=false"),
                out + "" + err);
        assertTrue(out.toString().contains("U-014,unit,blower unit,,due today,2026-02-28"), out.toString());
        assertEquals(3, run(new DueCommand(), "--on", "2026-03-01", "--fact", "agent=none"));
        assertTrue(
                out.toString()
                        .replaceAll("\\s+", " ")
                        .contains("status: overdue; due: 28 February 2026; days overdue: 1"),
                out.toString());
        assertTrue(out.toString().replaceAll("\\s+", " ").contains("COSHH reg 9(3)-(4)"), out.toString());
    }

    @Test
    void allThatIsMissingIsNamedAtOnce() throws Exception {
        Path file = folder.resolve("items.yaml");
        Files.writeString(file, "- {kind: wearer, id: W-1}\n- {kind: site, id: S-1}\n");
        assertEquals(2, run(new RegisterCommand(), "--file", file.toString()));
        assertTrue(err.toString().contains("items.yaml:1 name is missing for wearer."), err.toString());
        assertTrue(
                err.toString().contains("items.yaml:2 employer is missing for site, and so is address."),
                err.toString());
        assertTrue(err.toString().contains("Add employer=... address=..."), err.toString());
    }

    @Test
    void rulesWithoutACodeAreSaidToHoldNone() throws Exception {
        Path rules = Files.createDirectories(folder.resolve("rules/shared")).getParent();
        for (List<String> words : List.of(
                List.of("codes"), List.of("rules"), List.of("advise", "scenarios/tours/stainless-brackets.yaml"))) {
            List<String> all = new ArrayList<>(words);
            all.addAll(List.of("--rules", rules.toString()));
            CommandRun run = CommandRun.of(all.toArray(String[]::new));
            assertEquals(2, run.exit(), run.toString());
            assertTrue(run.err().contains("holds no code: no folder in it has a code.yaml."), run.err());
            assertFalse(run.err().contains("one of"), run.err());
        }
    }

    @Test
    void aFlowBelowTheMinimumOfTheRegisterClosesTheUnit() {
        assertEquals(0, examined("2026-03-02", "150"));
        assertTrue(
                out.toString()
                        .contains(
                                "DO NOT USE U-014. Failed: thorough examination (flow 150 is below 160 L/min). Before it is used"),
                out.toString());
        assertTrue(
                out.toString().contains("Given as passed, it counts as failed: flow 150 is below 160 L/min."),
                out.toString());
        assertEquals(3, run(new DueCommand(), "--on", "2026-03-02"));
        assertTrue(
                out.toString().replaceAll("\\s+", " ").contains("last done: never passed; failed on 2 March 2026"),
                out.toString());
        assertEquals(3, run(new CalendarCommand(), "--on", "2026-03-02"));
        assertTrue(out.toString().contains("SUMMARY:DO NOT USE. U-014: thorough examination"), out.toString());
        assertTrue(out.toString().contains("DESCRIPTION:DO NOT USE. Failed: thorough examination"), out.toString());
        assertEquals(3, run(new RecordCommand(), "U-014"));
        assertTrue(out.toString().contains("DO NOT USE"));
        assertTrue(out.toString().contains("failed: flow 150 is below 160 L/min"), out.toString());
        assertEquals(
                0,
                run(new EntryCommand(), "repair", "item=U-014", "on=2026-03-03", "by=workshop", "work=hose changed"));
        assertEquals(0, examined("2026-03-03", "171"));
        run(new RecordCommand(), "U-014", "--on", "2026-03-03");
        assertFalse(out.toString().contains("DO NOT USE"));
    }

    @Test
    void aCorrectionAndAVoidAreLaterEntries() {
        examined("2026-03-02", "150");
        assertEquals(
                0,
                run(
                        new EntryCommand(),
                        "examination",
                        "item=U-014",
                        "on=2026-03-02",
                        "by=Sanna Teller",
                        "result=passed",
                        "condition=sound",
                        "flow=175",
                        "corrects=3",
                        "corrects-because=read the scale wrongly"),
                err.toString());
        assertEquals(
                0,
                run(new EntryCommand(), "void", "item=U-014", "entry=4", "by=Sanna Teller", "reason=wrong unit"),
                err.toString());
        run(new EntryCommand(), "--list", "U-014");
        assertTrue(
                out.toString()
                        .contains("4  2026-03-02  examination  passed  by Sanna Teller  corrects 3  (corrected later)"),
                out.toString());
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(
            delimiter = '|',
            value = {
                "flow=17l | flow must be a number but is \"17l\". | digits and a point",
                "flwo=171 | flwo is not a field of examination. | \"flow\"",
                "on=2026-02-30 | on must be a day but is \"2026-02-30\". | year-month-day",
                "result=fine | result cannot be \"fine\". | passed, failed",
                "item=U-041 | \"U-041\" is not in the register. | register it first"
            })
    void wrongInputNamesTheFieldAndWhatWasFound(String word, String message, String maybe) {
        List<String> words = new ArrayList<>(List.of("examination"));
        String name = word.substring(0, word.indexOf('='));
        for (String right : List.of("item=U-014", "by=Sanna Teller", "result=passed", "condition=sound")) {
            if (!right.startsWith(name + "=")) {
                words.add(right);
            }
        }
        words.add(word);
        assertEquals(2, run(new EntryCommand(), words.toArray(String[]::new)));
        assertTrue(err.toString().contains(message), err.toString());
        assertTrue(StringUtils.containsIgnoreCase(err.toString(), maybe), err.toString());
    }

    @Test
    void factsAreHeldAgainstTheVocabulary() {
        assertEquals(2, run(new RegisterCommand(), "unit", "id=U-2", "description=x", "use-mode=rutine"));
        assertTrue(err.toString().contains("use-mode cannot be \"rutine\".\nDid you mean \"routine\""), err.toString());
        assertEquals(2, run(new RegisterCommand(), "unti", "id=U-2", "description=x"));
        assertTrue(err.toString().contains("kind cannot be \"unti\".\nDid you mean \"unit\""), err.toString());
    }

    @Test
    void withoutATerminalFieldsOrAFileNothingIsGuessed() {
        EntryCommand log = new EntryCommand();
        log.terminal = Optional::empty;
        assertEquals(2, run(log));
        assertTrue(
                err.toString().contains("names neither a field nor a file.\nWrite entry examination"), err.toString());
    }

    @Test
    void onATerminalItAsksForEachField() {
        StringWriter screen = new StringWriter();
        String answers = "nonsense\nrepair\nU-014\n2026-03-02\nworkshop\n\nhose changed\n\n";
        EntryCommand log = new EntryCommand();
        log.terminal =
                () -> Optional.of(new Prompts(new BufferedReader(new StringReader(answers)), new PrintWriter(screen)));
        assertEquals(0, run(log), err.toString());
        assertTrue(out.toString().contains("repair of U-014 on 2026-03-02, done."), out.toString());
        assertTrue(screen.toString().contains("It cannot be \"nonsense\".")
                && screen.toString().contains("This one is needed."));
    }

    @Test
    void answersThatStopHalfwayWriteNothing() {
        EntryCommand log = new EntryCommand();
        log.terminal = () -> Optional.of(new Prompts(
                new BufferedReader(new StringReader("repair\nU-014\n")), new PrintWriter(new StringWriter())));
        assertEquals(2, run(log));
        run(new StoreCommand(), "verify");
        assertTrue(out.toString().startsWith("Intact: 2 entries."), out.toString());
    }

    @Test
    void theSiteRemembersItsCodeAndWithoutOneNothingIsGuessed() {
        assertEquals(
                0,
                run(new RegisterCommand(), "site", "id=site", "employer=Tarn Haven Fabrication", "address=Quay Road 1"),
                err.toString());
        assertEquals(2, run(new DueCommand()));
        assertTrue(
                err.toString().contains("--code is not given") && err.toString().contains("\nSay which country"),
                err.toString());
    }
}
