package org.fumewarden.assessment;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.fumewarden.codes.CodeBook;
import org.fumewarden.codes.RuleFolder;
import org.fumewarden.exposure.Screening;
import org.fumewarden.task.TaskReader;
import org.fumewarden.task.TaskTree;
import org.junit.jupiter.api.Test;

/**
 * The estimate against studies that are not in its tables and had no part in choosing its figures. Each was read in an
 * abstract, a summary, or another paper's account; "taken" marks what the reader took for what was not said.
 */
class OtherStudiesTest {
    private static final CodeBook BOOK = CodeBook.read(RuleFolder.at(Path.of("rules")), "gb");
    private static final ExposureTables FIGURES = new ExposureTables(BOOK.rows(LocalDate.of(2026, 11, 29)));
    private static final TaskReader READER = new TaskReader(BOOK.vocabulary());

    private record Case(
            String study, String process, String metal, String place, String agent, double centre, double deviation) {
        double percentile() {
            return centre * Math.pow(deviation, 1.6448536);
        }

        Screening estimate() {
            String text = "title: t\ncode: gb\non: 2026-11-29\ntask: {process: " + process + ", base-metal: " + metal
                    + ", place: " + place + "}\n";
            return RoomEstimate.of(READER.read(TaskTree.parse("task", text), "gb", Optional.empty()), FIGURES, agent)
                    .screening()
                    .orElseThrow(() -> new AssertionError("no estimate: " + this));
        }
    }

    /** One study a line, below the names of its cells. */
    private static List<Case> cases() throws IOException {
        return Files.readAllLines(Path.of("src/test/resources/org/fumewarden/assessment/other-studies.txt")).stream()
                .skip(1)
                .map(line -> line.split(" \\| "))
                .map(c -> new Case(c[0], c[1], c[2], c[3], c[4], Double.parseDouble(c[5]), Double.parseDouble(c[6])))
                .toList();
    }

    @Test
    void studiesOutsideTheTablesAreNearAndMostlyCovered() throws IOException {
        List<Case> cases = cases();
        List<String> lines = new ArrayList<>();
        double sum = 0;
        int covered = 0;
        for (Case each : cases) {
            Screening found = each.estimate();
            double median = found.percentile(0.5).value().orElseThrow();
            double counts = found.governing().value().orElseThrow();
            sum += Math.log(median / each.centre());
            covered += counts >= each.percentile() ? 1 : 0;
            lines.add(String.format(
                    Locale.ROOT,
                    "%s | %s | %s | %s | %.3g | %.3g | %.2f | %.3g | %.3g%s",
                    each.study(),
                    each.process(),
                    each.place(),
                    each.agent(),
                    each.centre(),
                    median,
                    median / each.centre(),
                    each.percentile(),
                    counts,
                    counts >= each.percentile() ? "" : " MISSED"));
        }
        double mean = Math.exp(sum / cases.size());
        String all = mean + ", covered " + covered + " of " + cases.size() + "\n" + String.join("\n", lines);
        assertTrue(mean > 0.7 && mean < 2, all);
        assertTrue(covered >= 0.95 * cases.size(), all);
    }
}
