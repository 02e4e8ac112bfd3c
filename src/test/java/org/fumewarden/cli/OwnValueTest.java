package org.fumewarden.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.fumewarden.check.EditedRules;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A value that an organisation put in place of ours, and typed apart, is cited as its own: EH40/2005 gives 0.5 mg/m3 for nickel and
 * not the 0.1 that the invented house list of Tarn Haven does.
 */
final class OwnValueTest {
    private static final String TASK = "scenarios/tours/stainless-brackets.yaml";
    private static final String OWN =
            "value of this organisation, typed apart on 2026-03-01, A. Officer, typed-apart.csv line 2";

    @TempDir
    private Path folder;

    private Path rules;

    @BeforeEach
    void copy() throws IOException {
        rules = EditedRules.copy(folder);
        EditedRules.edit(
                rules,
                "gb/tables/limits.yaml",
                "agent: nickel, unit: mg/m3, twa: 0.5",
                "agent: nickel, unit: mg/m3, twa: 0.1");
        Files.writeString(
                folder.resolve("typed-apart.csv"),
                "table,row,cell,value,source,by,on\ngb-limits,nickel,twa,0.10,the house list of Tarn Haven,A. Officer,2026-03-01\n");
    }

    private String run(String... args) {
        return CommandRun.of(java.util.stream.Stream.concat(
                                List.of(args).stream(), List.of("--rules", rules.toString()).stream())
                        .toArray(String[]::new))
                .out();
    }

    @Test
    void everySheetCitesItAsTheOrganisationsOwn() {
        String notes = run("advise", TASK, "--detail");
        assertTrue(notes.replaceAll("\\s+", " ").contains("the house list of Tarn Haven, " + OWN), notes);
        String german = run("advise", TASK, "--detail", "--language", "de").replaceAll("\\s+", " ");
        assertTrue(german.contains("Wert dieser Organisation, gesondert erfasst am 2026-03-01, A. Officer"), german);
        String json = run("advise", TASK, "--format", "json");
        assertTrue(json.contains("\"the house list of Tarn Haven\"") && json.contains(OWN), json);
    }

    @Test
    void explainSaysWhoseItIsInThePlaceOfTheList() {
        String why = run("explain", TASK, "--why", "nickel").replaceAll("\\s+", " ");
        assertTrue(why.contains(OWN), why);
        String line = why.substring(why.indexOf("insoluble compounds: limit 0.1"));
        assertFalse(line.substring(0, line.indexOf(OWN)).contains("EH40"), line);
    }

    @Test
    void whatNobodyTypedKeepsThePlaceOfItsTable() throws IOException {
        Files.delete(folder.resolve("typed-apart.csv"));
        String notes = run("advise", TASK, "--detail");
        assertFalse(notes.contains("value of this organisation"), notes);
        assertEquals(0, CommandRun.of("advise", TASK).exit());
    }
}
