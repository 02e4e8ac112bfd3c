package org.fumewarden.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringReader;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;

/** The examination of extraction as COSHH regulation 9(2) and HSG258 want it, by prompts, files and flags. */
class ExtractionLogTest {
    @TempDir
    private Path folder;

    private String store;

    @BeforeEach
    void register() {
        store = folder.resolve("yard.db").toString();
        run("register", "plant", "id=X-01", "description=extraction arm", "lev-process=general", "--store", store);
        run("register", "unit", "id=S-1", "description=set", "cylinder-full-pressure=300", "--store", store);
    }

    private static CommandRun run(String... words) {
        return CommandRun.of(words);
    }

    private String asked(String answers) {
        StringWriter screen = new StringWriter();
        EntryCommand log = new EntryCommand();
        log.terminal =
                () -> Optional.of(new Prompts(new BufferedReader(new StringReader(answers)), new PrintWriter(screen)));
        new CommandLine(log).execute("--store", store);
        return screen.toString();
    }

    @Test
    void thePromptsAskAPlantAboutItsPerformanceAndAUnitAboutItsBattery() {
        String plant = asked("examination\nX-01\n2026-03-02\nOdran Pell\npassed\nsound\n" + "\n".repeat(20));
        assertTrue(plant.contains("operating-conditions") && plant.contains("performance-met (yes or no)"), plant);
        assertFalse(plant.contains("battery-condition") || plant.contains("cylinder"), plant);
        String unit = asked("examination\nS-1\n2026-03-02\nOdran Pell\npassed\nsound\n" + "\n".repeat(20));
        assertTrue(unit.contains("battery-condition") && unit.contains("cylinder-full-pressure"), unit);
        assertFalse(unit.contains("operating-conditions"), unit);
    }

    @Test
    void aFileCarriesTheFieldsAndANoClosesThePlant() throws IOException {
        Path csv = Files.writeString(
                folder.resolve("lev.csv"),
                "kind,item,on,by,result,condition,operating-conditions,intended-performance,performance-met\n"
                        + "examination,X-01,2026-03-02,Odran Pell,passed,sound,\"two arms, clean\",0.5 m/s,no\n");
        CommandRun logged = run("log", "--file", csv.toString(), "--store", store);
        assertEquals(0, logged.exit(), logged.err());
        assertTrue(logged.out().contains("DO NOT USE X-01."), logged.out());
        String record = run("record", "X-01", "--code", "gb", "--store", store).out();
        assertTrue(record.contains("two arms, clean") && record.contains("0.5 m/s; met: no"), record);
    }

    @Test
    void aWrongValueIsNamedWithFileLineAndField() throws IOException {
        Path csv = Files.writeString(
                folder.resolve("lev.csv"),
                "kind,item,by,result,condition,performance-met\nexamination,X-01,O,passed,sound,perhaps\n");
        CommandRun refused = run("log", "--file", csv.toString(), "--store", store);
        assertEquals(2, refused.exit());
        assertTrue(
                refused.err().contains("lev.csv:2 performance-met cannot be \"perhaps\".\nWrite yes or no."),
                refused.err());
        CommandRun item =
                run("register", "unit", "id=S", "description=x", "cylinder-full-pressure=full", "--store", store);
        assertTrue(item.err().contains("command line: cylinder-full-pressure must be a number"), item.err());
    }

    /** 29 CFR 1910.134(h)(3)(iii); nothing is told of a file that is refused as a whole. */
    @Test
    void theSentenceOnACylinderIsToldOnceItIsWritten() throws IOException {
        String[] low = {
            "log",
            "examination",
            "item=S-1",
            "by=O",
            "result=passed",
            "condition=sound",
            "cylinder-pressure=264",
            "--code",
            "us",
            "--store",
            store
        };
        assertTrue(run(low).out().startsWith("The cylinder holds 264 of 300 bar, 88 %: refill it"), run(low).out());
        Path csv = Files.writeString(
                folder.resolve("sets.csv"),
                "kind,item,by,result,condition,cylinder-pressure\nexamination,S-1,O,passed,sound,264\n"
                        + "examination,S-1,O,passed,sound,full\n");
        CommandRun refused = run("log", "--file", csv.toString(), "--code", "us", "--store", store);
        assertEquals(2, refused.exit());
        assertEquals("", refused.out());
    }

    @Test
    void aListOfTheRegisterInATaskIsReadOrRefused() throws IOException {
        Path task = folder.resolve("task.yaml");
        Files.writeString(task, "title: t\ncode: gb\non: 2026-03-02\nregister: [{about: x, sais: y}]\n");
        CommandRun refused = run("advise", task.toString());
        assertEquals(2, refused.exit());
        assertTrue(refused.err().contains("task.yaml:4 register.0.sais")
                && refused.err().contains("Did you mean \"says\""));
        Files.writeString(task, "title: t\ncode: gb\non: 2026-03-02\nregister: yes\n");
        assertTrue(run("advise", task.toString()).err().contains("register must be a list."));
    }
}
