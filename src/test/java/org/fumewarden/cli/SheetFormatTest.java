package org.fumewarden.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The sheet as HTML and as PDF, from the command line. */
class SheetFormatTest {
    private static final String TOUR = "scenarios/tours/stainless-brackets.yaml";

    @TempDir
    private Path folder;

    @Test
    void htmlGoesToStandardOutputWhole() {
        CommandRun run = CommandRun.of("advise", TOUR, "--format", "html", "--language", "de");
        assertEquals(0, run.exit(), run.err());
        assertTrue(run.out().startsWith("<!DOCTYPE html>"), run.out());
        assertTrue(run.out().endsWith("</html>\n"), run.out());
        assertTrue(run.out().contains("Mindestens erforderlicher Schutzfaktor"), run.out());
    }

    @Test
    void aFileHoldsTheSameBytesAsStandardOutput() throws IOException {
        Path file = folder.resolve("sheet.html");
        CommandRun told = CommandRun.of("advise", TOUR, "--format", "html");
        assertEquals(
                0,
                CommandRun.of("advise", TOUR, "--format", "html", "--output", file.toString())
                        .exit());
        assertEquals(told.out(), Files.readString(file, StandardCharsets.UTF_8));
    }

    @Test
    void aPdfAsksForAFile() {
        CommandRun run = CommandRun.of("advise", TOUR, "--format", "pdf");
        assertEquals(2, run.exit());
        assertTrue(run.err().contains("Add --output sheet.pdf."), run.err());
    }

    @Test
    void aPdfIsWritten() throws IOException {
        Path file = folder.resolve("sheet.pdf");
        assertEquals(
                0,
                CommandRun.of("advise", TOUR, "--format", "pdf", "--output", file.toString())
                        .exit());
        assertTrue(new String(Files.readAllBytes(file), StandardCharsets.ISO_8859_1).startsWith("%PDF-"));
    }

    @Test
    void aPlaceThatCannotBeWrittenIsNamed() {
        CommandRun run = CommandRun.of("advise", TOUR, "--format", "html", "--output", "/nowhere/sheet.html");
        assertEquals(2, run.exit());
        assertTrue(run.err().contains("/nowhere/sheet.html --output lies in a folder that does not exist"), run.err());
    }

    @Test
    void aPortThatNoMachineHasIsWrongInput() {
        assertEquals(2, CommandRun.of("serve", "--port", "70000").exit());
    }
}
