package org.fumewarden.task;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.Optional;
import org.fumewarden.codes.CodeBook;
import org.fumewarden.codes.InputException;
import org.fumewarden.codes.RuleFolder;
import org.junit.jupiter.api.Test;

/** A day has 24 hours: stretches of one shift that add up to more are a slip of the pen. */
class OneDayTest {
    private static Task task(String second) {
        String text = "title: stretches\ncode: gb\non: 2026-03-02\n"
                + "exposures: [{agent: iron-oxide, periods: [{level: 1 mg/m3, duration: 20 h}, {level: 1 mg/m3, duration: "
                + second + "}]}]\n";
        return new TaskReader(
                        CodeBook.read(RuleFolder.at(Path.of("rules")), "gb").vocabulary())
                .read(TaskTree.parse("stretches.yaml", text), "gb", Optional.empty());
    }

    @Test
    void aFullDayIsRead() {
        assertEquals(1, task("4 h").readings().size());
    }

    @Test
    void moreThanADayIsRefused() {
        InputException refused = assertThrows(InputException.class, () -> task("241 min"));
        assertTrue(
                refused.problems().get(0).text().contains("1441 minutes in all, more than the 1440 minutes"),
                refused.problems().get(0).text());
    }
}
