package org.fumewarden.task;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.Optional;
import org.fumewarden.codes.CodeBook;
import org.fumewarden.codes.RuleFolder;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A title is a name and no answer, so the word for an answer that nobody has is a title like any other. */
class TitleTest {
    @ParameterizedTest
    @CsvSource({"'title: unknown\n', unknown", "'title: Bay 4\n', Bay 4", "'', Task without a title"})
    void aTitleStandsAsItWasTold(String line, String title) {
        Task task = new TaskReader(
                        CodeBook.read(RuleFolder.at(Path.of("rules")), "gb").vocabulary())
                .read(
                        TaskTree.parse("task.yaml", line + "code: gb\non: 2026-03-02\ntask: {process: unknown}\n"),
                        "gb",
                        Optional.empty());
        assertEquals(title, task.title());
    }
}
