package org.fumewarden.report.upkeep;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.fumewarden.codes.CodeBook;
import org.fumewarden.codes.RuleFolder;
import org.fumewarden.duties.DutyBook;
import org.fumewarden.model.Duty;
import org.junit.jupiter.api.function.Executable;

/**
 * An example worked by hand.
 *
 * @param id c for computed, p for published, d for decided from the rows of the duties
 * @param source the document that it follows from, and what it says
 */
record WorkedExample(String id, String source, Executable check) {
    static final LocalDate TODAY = LocalDate.parse("2026-03-02");

    static DutyBook book(String code) {
        return DutyBook.of(CodeBook.read(RuleFolder.shipped(), code), TODAY);
    }

    /** Where a store may stand for the length of one run. */
    static Path store() throws IOException {
        Path folder = Files.createTempDirectory("worked");
        folder.toFile().deleteOnExit();
        Path file = folder.resolve("log.db");
        for (String end : List.of("", "-shm", "-wal", "-journal")) {
            Path.of(file + end).toFile().deleteOnExit();
        }
        return file;
    }

    /** The duty as shipped, so that its period and its conditions are tried and not those of the example. */
    static Duty duty(String code, String id) {
        return book(code).duties().stream()
                .filter(d -> d.id().equals(id))
                .findFirst()
                .orElseThrow(() -> new AssertionError(code + " ships no duty " + id));
    }
}
