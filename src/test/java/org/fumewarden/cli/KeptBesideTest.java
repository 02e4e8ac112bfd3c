package org.fumewarden.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.fumewarden.audit.KeptAdvice;
import org.fumewarden.check.CopiedRules;
import org.fumewarden.check.EditedRules;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** What lies beside an organisation's rules decides the sheet, so it is kept and hashed with them; the values are made up. */
final class KeptBesideTest extends CopiedRules {
    private static final String TASK = "scenarios/tours/stainless-brackets.yaml";

    @BeforeEach
    void edit() {
        EditedRules.edit(
                rules,
                "gb/tables/limits.yaml",
                "agent: nickel, unit: mg/m3, twa: 0.5",
                "agent: nickel, unit: mg/m3, twa: 0.1");
    }

    @Test
    void adviceIsReplayedByteForByteFromWhatWasKeptAndEachSheetHasItsRevision() throws IOException {
        keep();
        type();
        keep();
        affirm();
        keep();
        try (Stream<Path> paths = Files.walk(folder.resolve("rules"))) {
            assertTrue(paths.map(Path::toFile)
                    .sorted(java.util.Comparator.reverseOrder())
                    .allMatch(java.io.File::delete));
        }
        Files.delete(folder.resolve("typed-apart.csv"));
        Files.delete(folder.resolve("affirmations.yaml"));
        for (int entry = 1; entry <= 3; entry++) {
            CommandRun audit = CommandRun.of("audit", entry(entry).toString());
            assertTrue(audit.out().contains("the same advice, byte for byte"), audit.out());
        }
        assertEquals(
                3,
                Stream.of(1, 2, 3)
                        .map(n -> KeptAdvice.read(entry(n)).revision())
                        .distinct()
                        .count());
    }

    @Test
    void anArchiveThatLacksAFileAccusesNobody() throws IOException {
        type();
        keep();
        Path archive;
        try (Stream<Path> paths = Files.list(folder.resolve("kept/rules"))) {
            archive = paths.findFirst().orElseThrow();
        }
        try (var zip = java.nio.file.FileSystems.newFileSystem(archive)) {
            Files.delete(zip.getPath("+beside/typed-apart.csv"));
        }
        CommandRun audit = CommandRun.of("audit", entry(1).toString());
        assertEquals(3, audit.exit());
        assertTrue(audit.out().contains("one is missing or is another"), audit.out());
        assertTrue(!audit.out().contains("who changed"), audit.out());
    }

    private void keep() {
        CommandRun run = CommandRun.of(
                "advise",
                TASK,
                "--rules",
                rules.toString(),
                "--keep",
                folder.resolve("kept").toString());
        assertTrue(run.err().contains("Kept as"), run.err());
    }

    private void type() throws IOException {
        Files.writeString(
                folder.resolve("typed-apart.csv"),
                "table,row,cell,value,source\ngb-limits,nickel,twa,0.1,the house list of Tarn Haven\n");
    }

    private void affirm() {
        CommandRun run = CommandRun.of(
                "rules",
                "--rules",
                rules.toString(),
                "--affirm",
                "gb-limits#nickel/twa",
                "--by",
                "officer K",
                "--document",
                "the house list",
                "--place",
                "page 1",
                "--on",
                "2026-03-02");
        assertEquals(0, run.exit(), run.err());
    }

    private Path entry(int number) {
        return folder.resolve("kept/0000000" + number + ".kept.json");
    }
}
