package org.fumewarden.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class DrillCommandTest {
    private static final String FILE = "scenarios/drills/01-short-job-without-extraction.yaml";

    private final InputStream console = System.in;

    @TempDir
    Path folder;

    @AfterEach
    void giveTheConsoleBack() {
        System.setIn(console);
    }

    private static CommandRun typed(String lines, String... arguments) {
        System.setIn(new ByteArrayInputStream(lines.getBytes(StandardCharsets.UTF_8)));
        return CommandRun.of(arguments);
    }

    @Test
    void aRoundAsksFiveQuestionsWithHintSkipAndMarks() {
        CommandRun run = typed("?\nAPF 20\nFFP 3\nTH3 P\ntrain the wearer\n-\n", "drill", FILE, "--seed", "1");
        assertEquals(0, run.exit(), run.err());
        assertTrue(run.out().contains("Question 5 of 5"), run.out());
        assertTrue(run.out().contains("Divide each level by its limit"), "the hint");
        assertTrue(run.out().contains("Skipped."), run.out());
        assertTrue(run.out().contains("4 right of 5 answered"), run.out());
    }

    @Test
    void anUnreadableAnswerIsAskedForAgain() {
        CommandRun run = typed("twenty bananas\nx\ny\nz\n20\n.\n", "drill", FILE, "--seed", "1");
        assertFalse(run.out().contains("Not right."), "what is not understood costs no try");
        assertTrue(run.out().contains("Answer with one number, such as 20."), run.out());
        assertTrue(run.out().contains("1 right of 1 answered"), run.out());
    }

    @Test
    void theEndOfTheInputEndsWithWhatWasAnsweredAndTheScoreIsWritten() throws IOException {
        Path score = folder.resolve("score.csv");
        CommandRun run = typed("20\n", "drill", FILE, "--score", score.toString());
        assertEquals(0, run.exit(), run.err());
        assertTrue(run.out().contains("1 right of 1 answered. 5 were asked for."), run.out());
        assertEquals(2, Files.readAllLines(score).size(), "the head and one answer");
        assertTrue(Files.readString(score).contains("factor,20,yes"));
    }

    @Test
    void aBadFileIsNamedAndSkipped() throws IOException {
        Files.copy(
                Path.of("src/main/resources/org/fumewarden/web/starts/bench-stainless.yaml"), folder.resolve("b.yaml"));
        Files.writeString(folder.resolve("a.yaml"), "title: [\n");
        Path score = folder.resolve("score.csv");
        CommandRun run = typed("20\n", "drill", folder.toString(), "--score", score.toString());
        assertEquals(2, run.exit());
        assertTrue(run.err().contains("a.yaml"), run.err());
        assertTrue(run.out().contains("Question 1 of 5"), run.out());
        assertTrue(Files.readString(score).contains("factor"));
    }

    @Test
    void aStoppedRoundIsTakenUpAgain() throws IOException {
        String progress = folder.resolve("progress.json").toString();
        String[] command = {"drill", FILE, "--seed", "1", "--progress", progress};
        assertTrue(typed("20\nFFP 3\n.\n", command).out().contains("2 right of 2 answered"));
        CommandRun run = typed("TH3 P\n1\n1\n", command);
        assertTrue(run.out().contains("2 answered before"), run.out());
        assertTrue(run.out().contains("Question 3 of 5"), run.out());
        assertFalse(run.out().contains("Question 2 of 5"), run.out());
        assertTrue(run.out().contains("of 5 answered"), run.out());
        CommandRun other = typed("", "drill", "--code", "gb", "--topic", "fit", "--seed", "1", "--progress", progress);
        assertEquals(2, other.exit());
        assertTrue(other.err().contains("belongs to another round"), other.err());
    }

    @Test
    void tasksAreMadeToOrderAndWrongOrdersAreNamed() {
        CommandRun run = typed("", "drill", "--code", "gb", "--topic", "gas,lead", "--difficulty", "2", "--seed", "7");
        assertEquals(0, run.exit(), run.err());
        assertTrue(run.out().contains("10 were asked for"), run.out());
        assertTrue(typed("", "drill", "--code", "gb", "--topic", "gass").err().contains("gas"));
        assertTrue(typed("", "drill", "--topic", "gas").err().contains("--code"));
        assertTrue(typed("", "drill", "--code", "gb", "--topic", "gas", "--difficulty", "9")
                .err()
                .contains("1, 2 or 3"));
        assertEquals(2, typed("", "drill").exit());
    }

    @Test
    void theCertificatesLastLineLogsTheTraining() throws IOException {
        Path paper = folder.resolve("certificate.txt");
        CommandRun run =
                typed("", "drill", "--code", "gb", "--topic", "gas", "--seed", "7", "--certificate", paper.toString());
        assertEquals(0, run.exit(), run.err());
        String line = Files.readString(paper).replaceAll("\\s+", " ");
        String store = folder.resolve("register.db").toString();
        CommandRun wearer = CommandRun.of("register", "wearer", "id=W-7", "name=W-7", "--store", store);
        assertEquals(0, wearer.exit(), wearer.err());
        String content = line.replaceAll(".*content=\"([^\"]*)\".*", "$1");
        CommandRun logged = CommandRun.of(
                "entry",
                "training",
                "item=W-7",
                "on=2026-03-02",
                "by=T. Trainer",
                "result=passed",
                "content=" + content,
                "--store",
                store);
        assertEquals(0, logged.exit(), logged.err());
        assertTrue(logged.out().contains("training of W-7"), logged.out());
    }

    @Test
    void theChecksBeforeUseArePractised() {
        CommandRun run = typed("1\n1\n", "drill", "--code", "gb", "--before-use", "--seed", "3", "--language", "de");
        CommandRun mask = typed("", "drill", "--code", "gb", "--before-use", "powered-mask", "--seed", "3");
        assertTrue(mask.out().contains("Check your powered mask"), mask.out());
        assertEquals(
                2, typed("", "drill", "--code", "gb", "--before-use", "helmet").exit());
        assertEquals(0, run.exit(), run.err());
        assertTrue(run.out().contains("Welche Prüfung kommt als Nächstes?"), run.out());
    }
}
