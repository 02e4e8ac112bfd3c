package org.fumewarden.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.fumewarden.language.GermanLines;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** How well values are known, per code and table, the worst first. */
final class ValueSheetTest {
    private static final Pattern HEAD = Pattern.compile("(?m)^([a-z]{2}): memory (\\d+), practice (\\d+)");
    private static final Pattern TABLE = Pattern.compile("(?m)^  (\\S+) +(?:memory (\\d+))?");

    private static String sheet(String... more) {
        List<String> words = new ArrayList<>(List.of("codes", "--values"));
        words.addAll(List.of(more));
        CommandRun run = CommandRun.of(words.toArray(String[]::new));
        assertEquals(0, run.exit(), run.err());
        return run.out();
    }

    /** The order and the sums as they are printed; the counts of a table counted by hand in its file. */
    @Test
    void theWorstCodeAndTheWorstTableStandFirst() {
        String all = sheet();
        List<Integer> memory = new ArrayList<>();
        Matcher head = HEAD.matcher(all);
        while (head.find()) {
            memory.add(Integer.valueOf(head.group(2)));
        }
        List<Integer> sorted = new ArrayList<>(memory);
        sorted.sort(Collections.reverseOrder());
        assertEquals(8, memory.size());
        assertEquals(sorted, memory);
        for (String code : all.split("\n\n")) {
            List<Integer> tables = new ArrayList<>();
            Matcher table = TABLE.matcher(code);
            while (table.find()) {
                tables.add(table.group(2) == null ? 0 : Integer.parseInt(table.group(2)));
            }
            List<Integer> worst = new ArrayList<>(tables);
            worst.sort(Collections.reverseOrder());
            assertEquals(worst, tables, code);
            Matcher sum = HEAD.matcher(code);
            assertTrue(sum.find(), code);
            assertEquals(
                    Integer.parseInt(sum.group(2)),
                    tables.stream().mapToInt(i -> i).sum(),
                    code);
        }
    }

    /** Common practice of plain language, no source: ids and citations keep their words. */
    @Test
    void theCodesAreToldInGerman() {
        assertTrue(sheet("gb", "--language", "de").matches("(?s)gb: aus der Erinnerung \\d+, übliche Praxis \\d+.*"));
        String codes = CommandRun.of("codes", "gb", "de", "us", "au", "nz", "--language", "de")
                .out();
        assertEquals("", GermanLines.faults("codes", codes.replaceAll("(?m)^[a-z]{2}: ", ""), List.of()));
    }

    /** A table of one's own with three rows, one of each kind of knowledge, and one of them affirmed. */
    @Test
    void eachRowIsCountedOnceByHowItIsKnown(@TempDir Path folder) throws IOException {
        Path rules = org.fumewarden.check.EditedRules.copy(folder);
        Files.writeString(rules.resolve("gb/tables/own.yaml"), """
                id: own-numbers
                kind: thresholds
                source: practice
                clause: "-"
                edition: "1"
                confidence: memory
                checked-on: 2026-11-25
                rows:
                  - {id: own-a, value: 1, unit: ratio}
                  - {id: own-b, value: 2, unit: ratio}
                  - {id: own-c, value: 3, unit: ratio, confidence: read}
                  - {id: own-d, value: 4, unit: ratio, confidence: practice}
                """);
        assertTrue(sheet("--rules", rules.toString())
                .contains("own-numbers                  memory 2, practice 1, read 1"));
        CommandRun.of(
                "rules",
                "--affirm",
                "own-numbers#own-a",
                "--by",
                "reviewer A",
                "--document",
                "a list",
                "--place",
                "1",
                "--on",
                "2026-03-02",
                "--rules",
                rules.toString());
        assertTrue(sheet("--rules", rules.toString())
                .contains("own-numbers                  memory 1, practice 1, read 1, affirmed 1"));
    }
}
