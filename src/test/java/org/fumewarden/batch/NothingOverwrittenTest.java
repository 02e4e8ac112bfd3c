package org.fumewarden.batch;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.fumewarden.cli.CommandRun;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What a command did not write itself stays as it is, and a resumed batch answers the input as it is now. */
final class NothingOverwrittenTest {
    private static final String TOUR = "scenarios/tours/stainless-brackets.yaml";

    @TempDir
    Path folder;

    private Path input;
    private Path out;
    private Path rejects;

    @BeforeEach
    void name() throws IOException {
        input = Files.write(folder.resolve("tasks.jsonl"), BatchTasks.mixed(30));
        out = folder.resolve("advice.jsonl");
        rejects = folder.resolve("advice.jsonl.rejects");
    }

    private CommandRun batch(String... more) {
        List<String> arguments = new ArrayList<>(List.of("batch", input.toString(), "--brief"));
        arguments.addAll(List.of(more));
        return CommandRun.of(arguments.toArray(String[]::new));
    }

    private CommandRun resume() {
        return batch("--out", out.toString(), "--resume");
    }

    private Path register() {
        Path store = folder.resolve("register.db");
        assertEquals(
                0,
                CommandRun.of("register", "unit", "id=U-1", "description=blower", "--store", store.toString())
                        .exit());
        return store;
    }

    @ParameterizedTest
    @ValueSource(strings = {"--out", "--rejects"})
    void noBatchTouchesAFileItDidNotBegin(String option) throws IOException {
        Path text = Files.writeString(folder.resolve("notes.txt"), "kept for years\n");
        Path empty = Files.createFile(folder.resolve("short.txt"));
        Files.writeString(empty, "{");
        for (Path victim : List.of(text, empty, register(), input, Files.createLink(folder.resolve("other"), input))) {
            for (String how : List.of("--resume", "--code=gb", "--force")) {
                byte[] before = Files.readAllBytes(victim);
                CommandRun run = option.equals("--out")
                        ? batch("--out", victim.toString(), how)
                        : batch("--out", out.toString(), "--rejects", victim.toString(), how);
                boolean meant = how.equals("--force") && (victim == text || victim == empty);
                if (meant) {
                    Files.write(victim, before);
                } else if (victim != empty || !how.equals("--resume")) {
                    assertEquals(2, run.exit(), victim + " " + how + run.err());
                    assertTrue(run.err().contains("\n"), run.err());
                    assertArrayEquals(before, Files.readAllBytes(victim), victim + " " + how);
                }
                Files.deleteIfExists(out);
                Files.deleteIfExists(rejects);
                Files.write(victim, before);
            }
        }
    }

    @Test
    void adviceAndRejectsAreTwoFiles() {
        assertEquals(
                2, batch("--out", out.toString(), "--rejects", out.toString()).exit());
        batch("--out", out.toString());
        CommandRun swapped = batch("--out", rejects.toString(), "--rejects", out.toString(), "--resume");
        assertEquals(2, swapped.exit());
        assertTrue(swapped.err().contains("was not begun by this command as this kind of file"), swapped.err());
    }

    @Test
    void resultsDoNotLieAmongTheTasks() throws IOException {
        Path tasks = Files.createDirectory(folder.resolve("tasks"));
        Files.writeString(tasks.resolve("a.json"), BatchTasks.task(1));
        input = tasks;
        CommandRun run = batch("--out", tasks.resolve("b.json").toString());
        assertEquals(2, run.exit());
        assertTrue(run.err().contains("lies among the tasks"), run.err());
    }

    @Test
    @Tag("ci")
    void aChangedTaskOrAnEditedLineIsDecidedAnewAndSaidSo() throws IOException {
        batch("--out", out.toString());
        byte[] whole = Files.readAllBytes(out);
        byte[] wholeRejects = Files.readAllBytes(rejects);
        Random random = new Random(20_260_302);
        for (int i = 0; i < 12; i++) {
            List<String> lines = new ArrayList<>(Files.readAllLines(out));
            int edited = 1 + random.nextInt(lines.size() - 2);
            lines.set(edited, lines.get(edited).replace("\"value\":", "\"value\":1"));
            lines.set(edited, lines.get(edited).replaceFirst("advice", "advise"));
            Files.write(out, lines);
            CommandRun run = resume();
            assertEquals(2, run.exit(), run.err());
            assertTrue(run.err().contains("1 line was changed since the last run"), run.err());
            assertTrue(run.err().contains("Advised on 26 tasks, rejected 3."), run.err());
            assertArrayEquals(whole, Files.readAllBytes(out), "line " + edited);
            assertArrayEquals(wholeRejects, Files.readAllBytes(rejects), "line " + edited);
        }
        List<String> tasks = new ArrayList<>(Files.readAllLines(input));
        tasks.set(3, tasks.get(7));
        tasks.set(10, tasks.get(2));
        tasks.set(12, "no task");
        Files.write(input, tasks);
        assertTrue(resume().err().contains("3 lines were changed"));
        Path fresh = folder.resolve("fresh.jsonl");
        batch("--out", fresh.toString());
        assertEquals(-1, Files.mismatch(fresh, out));
        assertEquals(-1, Files.mismatch(folder.resolve("fresh.jsonl.rejects"), rejects));
        try (Stream<Path> left = Files.list(folder)) {
            assertTrue(left.noneMatch(p -> p.toString().endsWith(".part")), "nothing is left beside");
        }
    }

    @Test
    void aChangedFileOfAFolderIsDecidedAnewAlsoThroughWhatItExtends() throws IOException {
        Path tasks = Files.createDirectory(folder.resolve("tasks"));
        Path base = Files.writeString(tasks.resolve("b.json"), BatchTasks.task(2));
        Files.writeString(tasks.resolve("a.yaml"), "extends: b.json\ntitle: First\n");
        Files.writeString(tasks.resolve("c.json"), BatchTasks.task(3));
        input = tasks;
        batch("--out", out.toString());
        Files.writeString(base, BatchTasks.task(4));
        assertTrue(resume().err().contains("2 lines were changed"));
        Path fresh = folder.resolve("fresh.jsonl");
        batch("--out", fresh.toString());
        assertEquals(-1, Files.mismatch(fresh, out));
    }

    @Test
    void anotherInputIsRefusedAndTheWorkOfHoursKept() throws IOException {
        batch("--out", out.toString());
        byte[] whole = Files.readAllBytes(out);
        List<String> other = new ArrayList<>(Files.readAllLines(input));
        other.replaceAll(l -> l + " ");
        Files.write(input, other);
        CommandRun run = resume();
        assertEquals(2, run.exit());
        assertTrue(run.err().contains("was written from another input."), run.err());
        Files.write(input, Files.readAllLines(input).subList(0, 4));
        assertEquals(2, resume().exit());
        assertArrayEquals(whole, Files.readAllBytes(out));
    }

    @Test
    void aSheetReplacesNothingUnlessThatIsMeant() throws IOException {
        Path task = Files.copy(Path.of(TOUR), folder.resolve("task.yaml"));
        Path store = register();
        Path note = Files.writeString(folder.resolve("note.txt"), "mine\n");
        for (Path victim : List.of(task, store, note, folder)) {
            byte[] before = Files.isDirectory(victim) ? new byte[0] : Files.readAllBytes(victim);
            for (List<String> force : List.of(List.<String>of(), List.of("--force"))) {
                List<String> arguments =
                        new ArrayList<>(List.of("advise", task.toString(), "--output", victim.toString()));
                arguments.addAll(force);
                CommandRun run = CommandRun.of(arguments.toArray(String[]::new));
                if (victim == note && !force.isEmpty()) {
                    assertTrue(Files.readString(note).contains("tainless"), "meant");
                    continue;
                }
                assertEquals(2, run.exit(), victim + run.err());
                assertTrue(run.err().contains("--output is "), run.err());
                if (!Files.isDirectory(victim)) {
                    assertArrayEquals(before, Files.readAllBytes(victim), Arrays.toString(before));
                }
            }
        }
    }
}
