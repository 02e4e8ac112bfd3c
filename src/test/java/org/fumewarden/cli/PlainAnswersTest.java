package org.fumewarden.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What commands answer must be true as it stands, and what they tell people to type must be taken when typed. */
class PlainAnswersTest {
    private static final String TOURS = "scenarios/tours/";

    @TempDir
    private Path folder;

    @Test
    void aFileWithoutExposuresIsAskedForWhatSettlesMost() throws IOException {
        Path file = folder.resolve("bare.yaml");
        Files.writeString(
                file, "title: Bench at Tarn Haven\ncode: gb\non: 2026-03-02\n" + "task: {process: mag-solid-wire}\n");
        for (String language : new String[] {"en", "de"}) {
            CommandRun run = CommandRun.of("explain", file.toString(), "--ask-first", "--language", language);
            assertEquals(0, run.exit(), run.err());
            assertTrue(run.out().contains("exposures."), run.out());
        }
    }

    /** 29 CFR 1926.62(d)(2): until lead is assessed the employer treats the worker as exposed above 50 times the limit. */
    @Test
    void aPresumedExposureIsNoFigure() {
        CommandRun run = CommandRun.of("advise", TOURS + "us-painted-bridge-lead.yaml", "--detail");
        assertTrue(flat(run).contains("at least 1000: not measured; until it is, the law presumes"), run.out());
        assertFalse(flat(run).contains("40 mg/m3 against"), run.out());
    }

    @Test
    void whatMustAllBeDoneIsNoChoice() {
        CommandRun run = CommandRun.of("explain", TOURS + "bearded-welder.yaml", "--why-not", "ffp3");
        assertTrue(run.out().contains("only if all of this is done:\n  - shave"), run.out());
        assertFalse(run.out().contains("if one of these"), run.out());
    }

    @Test
    void aRemedyIsTakenWhenItIsFollowed() {
        String file = TOURS + "stainless-brackets.yaml";
        CommandRun wrong = CommandRun.of("sweep", file, "--vary", "exposures.manganese-respirable.twa=5");
        assertTrue(
                wrong.err().contains("Give a range, for example --vary exposures.ozone.twa=0.01..5mg/m3"), wrong.err());
        CommandRun day = CommandRun.of("advise", file, "--on", "2026-02-30");
        assertTrue(day.err().contains("February 2026 has no day 30."), day.err());
        CommandRun heavy = CommandRun.of("advise", file, "--set", "exposures.ozone.twa=1 kg/m3");
        assertTrue(heavy.err().startsWith("--set exposures.ozone.twa cannot be right in air"), heavy.err());
        CommandRun grams = CommandRun.of("advise", file, "--set", "exposures.ozone.twa=2 g/l");
        assertTrue(grams.err().startsWith("--set exposures.ozone.twa cannot be right in air"), grams.err());
        CommandRun light = CommandRun.of("advise", file, "--set", "exposures.ozone.twa=0.000001 kg/m3");
        assertTrue(light.err().contains("Write \"1 mg/m3\"."), light.err());
    }

    private static String flat(CommandRun run) {
        return run.out().replaceAll("\\s+", " ");
    }
}
