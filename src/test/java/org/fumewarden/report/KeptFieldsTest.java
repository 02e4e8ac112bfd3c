package org.fumewarden.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.fumewarden.advice.Advice;
import org.fumewarden.advice.Advisor;
import org.fumewarden.engine.RuleBase;
import org.fumewarden.task.TaskReader;
import org.fumewarden.task.TaskTree;
import org.junit.jupiter.api.Test;

/** What is kept as text between pieces of advice never shows: the same bytes come out, first and second time. */
final class KeptFieldsTest {
    @Test
    void bulkAdviceIsTheAdviceByteForByte() throws IOException {
        AdviceJson bulk = AdviceJson.forMany();
        List<Advice> all = advice();
        assertTrue(all.size() > 30, "tours of more than one code: " + all.size());
        for (int time = 1; time <= 2; time++) {
            for (Advice advice : all) {
                assertEquals(
                        AdviceJson.text(json -> AdviceJson.write(advice, json)),
                        AdviceJson.text(json -> bulk.next(advice, json)),
                        advice.title() + ", time " + time);
            }
        }
    }

    /** Each tour as its file has it and for a wearer with a beard, so that like sentences rest on unlike steps. */
    private static List<Advice> advice() throws IOException {
        Map<String, Advisor> advisors = new TreeMap<>();
        List<Advice> all = new ArrayList<>();
        try (Stream<Path> files = Files.list(Path.of("scenarios/tours"))) {
            for (Path file : files.sorted().toList()) {
                for (String beard : List.of("", "true")) {
                    var tree = TaskTree.read(file);
                    if (!beard.isEmpty()) {
                        TaskTree.set(tree, "wearer.facial-hair", beard);
                    }
                    String code = TaskTree.top(tree, "code").orElseThrow();
                    Advisor advisor = advisors.computeIfAbsent(code, id -> new Advisor(RuleBase.shipped(id)));
                    TaskReader reader = new TaskReader(advisor.base().book().vocabulary());
                    all.add(advisor.advise(reader.read(tree, code, Optional.empty())));
                }
            }
        }
        return all;
    }
}
