package org.fumewarden.advice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.Collectors;
import org.fumewarden.batch.BatchTasks;
import org.fumewarden.batch.LineAdvisor;
import org.fumewarden.batch.Outcome;
import org.fumewarden.engine.RuleBase;
import org.fumewarden.report.AdviceJson;
import org.fumewarden.task.Task;
import org.fumewarden.task.TaskReader;
import org.fumewarden.task.TaskTree;
import org.junit.jupiter.api.Test;

/** What DEVELOPERS.md shows of library use compiles, runs, and keeps what it says about threads. */
class LibraryUseTest {
    private static final int THREADS = 4;
    private static final int TASKS = 60;

    @Test
    void theShownCallsAdvise() {
        Path file = Path.of("scenarios/tours/stainless-brackets.yaml");
        // shown: advisor
        Advisor advisor = Advisor.shipped("gb");
        TaskReader reader = new TaskReader(advisor.base().book().vocabulary());
        Task task = reader.read(TaskTree.read(file), "gb", Optional.empty());
        Advice advice = advisor.advise(task);
        String json = AdviceJson.write(advice);
        // end
        assertEquals(Status.COMPLETE, advice.status());
        assertTrue(json.contains("\"complete\""), "the status is in the JSON");
    }

    @Test
    void theShownWorkerAnswersEachLine() {
        String line = BatchTasks.task(1);
        // shown: worker
        LineAdvisor worker = new LineAdvisor(Advisor::shipped, Optional.empty(), Optional.empty());
        Outcome outcome = worker.answer(1, line);
        // end
        assertTrue(outcome.advised(), outcome.json());
        assertEquals(Outcome.Fate.REJECTED, worker.answer(2, "no task").fate());
    }

    @Test
    void oneWorkerGivesManyThreadsWhatItGivesOne() throws Exception {
        LineAdvisor alone =
                new LineAdvisor(code -> new Advisor(RuleBase.shipped(code)), Optional.empty(), Optional.empty());
        LineAdvisor shared =
                new LineAdvisor(code -> new Advisor(RuleBase.shipped(code)), Optional.empty(), Optional.empty());
        List<String> lines = BatchTasks.mixed(TASKS);
        ExecutorService pool = Executors.newFixedThreadPool(THREADS);
        try {
            List<Future<Outcome>> answers = new ArrayList<>();
            for (int i = 0; i < lines.size(); i++) {
                int number = i;
                answers.add(pool.submit(() -> shared.answer(number, lines.get(number))));
            }
            for (int i = 0; i < lines.size(); i++) {
                assertEquals(alone.answer(i, lines.get(i)), answers.get(i).get());
            }
        } finally {
            pool.shutdownNow();
        }
    }

    @Test
    void theGuideShowsTheseCalls() throws Exception {
        String guide = stripped(Files.readString(Path.of("DEVELOPERS.md")));
        String here = Files.readString(Path.of("src/test/java/org/fumewarden/advice/LibraryUseTest.java"));
        String[] parts = here.split("// shown: \\w+\n");
        assertEquals(3, parts.length, "two parts are shown");
        for (int i = 1; i < parts.length; i++) {
            String shown = stripped(parts[i].substring(0, parts[i].indexOf("// end")));
            assertTrue(guide.contains(shown), "DEVELOPERS.md does not show:\n" + shown);
        }
    }

    private static String stripped(String text) {
        return text.lines().map(String::strip).filter(line -> !line.isEmpty()).collect(Collectors.joining("\n"));
    }
}
