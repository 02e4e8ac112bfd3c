package org.fumewarden.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Files as spreadsheets and editors really write them: read where they can be, else told with line and what to do. */
final class OddInputsTest {
    private static final String ROW = "before-use-check,U-1,2026-03-02,Odran Pell,passed,\"tidy, dry\"";
    private static final String HEADS = "kind,item,on,by,result,remarks";

    @TempDir
    Path folder;

    private Path store;

    @BeforeEach
    void register() {
        store = folder.resolve("log.db");
        assertEquals(
                0,
                CommandRun.of("register", "unit", "id=U-1", "description=blower", "--store", store.toString())
                        .exit());
    }

    private CommandRun log(byte[] csv) throws IOException {
        Path file = Files.write(folder.resolve("checks.csv"), csv);
        return CommandRun.of("log", "--file", file.toString(), "--store", store.toString());
    }

    private CommandRun log(String csv) throws IOException {
        return log(csv.getBytes(StandardCharsets.UTF_8));
    }

    @Test
    void semicolonsTabsAndAByteOrderMarkAreRead() throws IOException {
        assertEquals(0, log(HEADS + "\n" + ROW + "\n").exit());
        assertEquals(0, log("\uFEFF" + HEADS + "\r\n" + ROW + "\r\n").exit());
        String semicolons =
                (HEADS + "\n" + ROW + "\n").replace(", ", "~").replace(',', ';').replace("~", ", ");
        assertEquals(0, log(semicolons).exit());
        assertEquals(0, log(semicolons.replace(';', '\t')).exit());
    }

    @Test
    void whatCannotBeReadIsToldWithItsLine() throws IOException {
        told(log(""), "checks.csv:1 has no heads of columns");
        told(log(HEADS + "\n"), "no line below");
        told(
                log(HEADS + "\n" + ROW + "\n" + ROW.replace("dry\"", "dry") + "\n" + ROW + "\n"),
                "has a quotation mark out of place");
        byte[] latin = (HEADS + "\n" + ROW + "\n" + ROW.replace("Pell", "P\u00e9ll") + "\n")
                .getBytes(StandardCharsets.ISO_8859_1);
        told(log(latin), "checks.csv:3 is not UTF-8 text");
    }

    private static void told(CommandRun run, String words) {
        assertEquals(2, run.exit(), run.err());
        assertTrue(run.err().contains(words), run.err());
        assertTrue(run.err().matches("(?s).*\n\\p{Lu}.*"), run.err());
    }

    @Test
    @Tag("ci")
    void anEndlessTitleOrNameIsRefusedSoon() throws IOException {
        String tour = Files.readString(Path.of("scenarios/tours/stainless-brackets.yaml"));
        String endless = "x".repeat(900_000);
        for (String text : new String[] {
            tour.replaceFirst("title: .*", "title: " + endless),
            tour.replace("place: indoors", "place: " + endless),
            tour.replace("place: indoors", endless + ": indoors")
        }) {
            Path file = Files.writeString(folder.resolve("task.yaml"), text);
            long start = System.nanoTime();
            CommandRun run = CommandRun.of("advise", file.toString());
            assertEquals(2, run.exit());
            assertTrue(run.err().length() < 2_000, "message of " + run.err().length());
            // Generous for a busy machine; 7.7 s was what a quiet one took.
            assertTrue(Duration.ofNanos(System.nanoTime() - start).toSeconds() < 20);
        }
    }
}
