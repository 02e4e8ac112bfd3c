package org.fumewarden.batch;

import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.fumewarden.advice.Advisor;
import org.fumewarden.audit.KeptAdvice;
import org.fumewarden.check.Scenario;
import org.fumewarden.codes.InputException;
import org.fumewarden.codes.Located;
import org.fumewarden.codes.Problem;
import org.fumewarden.codes.Spoilt;
import org.fumewarden.codes.Vocabulary;
import org.fumewarden.codes.YamlFiles;
import org.fumewarden.task.TaskReader;
import org.fumewarden.task.TaskTree;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** Spoilt tasks, batch lines and kept advice are read or refused in words, never with a fault. */
@Timeout(value = 1, unit = TimeUnit.HOURS, threadMode = Timeout.ThreadMode.SEPARATE_THREAD)
final class SpoiltTasksTest {
    private static final List<Path> FILES = Scenario.files(Path.of("scenarios"));

    @TempDir
    private Path folder;

    @Test
    void tasks() throws IOException {
        List<byte[]> corpus = new ArrayList<>();
        for (Path file : FILES) {
            byte[] bytes = Files.readAllBytes(file);
            if (!new String(bytes, StandardCharsets.UTF_8).contains("extends:")) {
                corpus.add(bytes);
            }
        }
        Vocabulary words = Advisor.shipped("gb").base().book().vocabulary();
        Spoilt.run("tasks", 1000, corpus, bytes -> {
            Located tree = TaskTree.parse("task.yaml", YamlFiles.text("task.yaml", bytes));
            new TaskReader(words).read(tree, "gb", Optional.empty());
        });
    }

    @Test
    void batchLines() throws IOException {
        LineAdvisor worker = new LineAdvisor(Advisor::shipped, Optional.of("gb"), Optional.empty());
        List<byte[]> corpus = new ArrayList<>();
        for (Path file : FILES.subList(0, 60)) {
            corpus.add(new ObjectMapper().writeValueAsBytes(TaskTree.read(file).plain()));
        }
        Spoilt.run("batch lines", 400, corpus, bytes -> {
            Outcome outcome = worker.answer(new Entry.Line(1, bytes, false));
            if (outcome.fate() == Outcome.Fate.FAULT) {
                throw new IllegalStateException(outcome.json());
            }
            new ObjectMapper().readTree(outcome.json());
            if (!outcome.advised()) {
                assertTrue(outcome.json().contains("\"maybe\""), outcome.json());
                throw new InputException(new Problem("line", 0, "", "was refused.", "see above."));
            }
        });
    }

    @Test
    @Tag("ci")
    void keptAdvice() throws IOException {
        Path kept = folder.resolve("kept");
        org.fumewarden.cli.CommandRun.of("advise", "scenarios/tours/odour-complaint.yaml", "--keep", kept.toString());
        List<byte[]> corpus = new ArrayList<>();
        for (Path file : new org.fumewarden.audit.Chain(kept).files()) {
            corpus.add(Files.readAllBytes(file));
        }
        byte[] whole = corpus.get(0);
        Path file = folder.resolve("one.json");
        Spoilt.run("kept advice", 300, corpus, bytes -> {
            Files.write(file, bytes);
            KeptAdvice read = KeptAdvice.read(file);
            if (read.intact()) {
                assertTrue(java.util.Arrays.equals(whole, bytes), "a changed byte was not found");
            }
            read.previous();
            read.sequence();
            read.revision();
            read.code();
            read.on();
            read.task();
            read.advice();
        });
    }
}
