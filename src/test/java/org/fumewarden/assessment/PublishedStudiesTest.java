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
import java.util.stream.Collectors;
import org.fumewarden.codes.CodeBook;
import org.fumewarden.codes.RuleFolder;
import org.fumewarden.exposure.Screening;
import org.fumewarden.model.PublishedExposure;
import org.fumewarden.model.Row;
import org.fumewarden.task.Task;
import org.fumewarden.task.TaskReader;
import org.fumewarden.task.TaskTree;
import org.junit.jupiter.api.Test;

/**
 * The estimate against published studies, each predicted without its own rows (rules/shared/tables/published-exposures.yaml
 * names the studies). The bounds are those the project set itself: in open shops the geometric mean of estimate over
 * measured lies between 0.7 and 2 with a spread below 2.5, and the 95th percentile is covered in 19 of 20.
 */
class PublishedStudiesTest {
    private static final CodeBook BOOK = CodeBook.read(RuleFolder.at(Path.of("rules")), "gb");
    private static final List<Row> ROWS = BOOK.rows(LocalDate.of(2026, 11, 28));
    private static final TaskReader READER = new TaskReader(BOOK.vocabulary());

    private record Case(PublishedExposure row, double estimate, double governing) {
        double ratio() {
            return estimate / row.centre().doubleValue();
        }

        double percentile() {
            return row.centre().doubleValue() * Math.pow(row.deviation().doubleValue(), 1.6448536);
        }

        boolean covered() {
            return governing >= percentile();
        }
    }

    private static Task task(PublishedExposure row) {
        String metal = row.metal().equals("any") ? "mild-steel" : row.metal();
        String consumable = row.consumable().equals("none") ? "" : "\nestimate: {consumable: " + row.consumable() + "}";
        String text = "title: t\ncode: gb\non: 2026-11-28\ntask: {process: " + row.process() + ", base-metal: " + metal
                + ", place: " + row.place() + "}" + consumable + "\n";
        return READER.read(TaskTree.parse("task", text), "gb", Optional.empty());
    }

    private static List<Case> leavingOneOut() {
        List<Case> cases = new ArrayList<>();
        for (Row each : ROWS) {
            if (each instanceof PublishedExposure row && !row.unit().symbol().equals("ppm")) {
                List<Row> rest = ROWS.stream()
                        .filter(r ->
                                !(r instanceof PublishedExposure x && x.study().equals(row.study())))
                        .toList();
                RoomEstimate.of(task(row), new ExposureTables(rest), row.agent())
                        .screening()
                        .ifPresent(s -> cases.add(new Case(
                                row,
                                Math.exp(s.medianLog()),
                                s.governing().value().orElseThrow())));
            }
        }
        return cases;
    }

    private static List<Case> open() {
        return leavingOneOut().stream()
                .filter(c -> !c.row().place().equals("enclosed"))
                .toList();
    }

    private static double[] middleAndSpread(List<Case> cases) {
        double mean =
                cases.stream().mapToDouble(c -> Math.log(c.ratio())).average().orElseThrow();
        double variance = cases.stream()
                        .mapToDouble(c -> Math.pow(Math.log(c.ratio()) - mean, 2))
                        .sum()
                / (cases.size() - 1);
        return new double[] {Math.exp(mean), Math.exp(Math.sqrt(variance))};
    }

    @Test
    void inOpenShopsTheEstimateIsNearWhatOthersMeasured() throws IOException {
        List<Case> open = open();
        String all = open.stream()
                .map(c -> String.format(
                        Locale.ROOT,
                        "%s: measured %s, estimated %.4g, ratio %.2f, counts %.4g against %.4g%s",
                        c.row().id(),
                        c.row().centre(),
                        c.estimate(),
                        c.ratio(),
                        c.governing(),
                        c.percentile(),
                        c.covered() ? "" : " MISSED"))
                .collect(Collectors.joining("\n"));
        double[] found = middleAndSpread(open);
        assertTrue(found[0] > 0.7 && found[0] < 2, found[0] + "\n" + all);
        long covered = open.stream().filter(Case::covered).count();
        assertTrue(covered >= 0.95 * open.size(), covered + " of " + open.size() + "\n" + all);
        List<Case> fume = open.stream()
                .filter(c -> !c.row().agent().equals("chromium-vi"))
                .toList();
        double[] without = middleAndSpread(fume);
        assertTrue(found[1] < 2.5, found[1] + "\n" + all);
        String page = Files.readString(Path.of("docs/decisions/screening-estimate.md"));
        String line = String.format(
                Locale.ROOT,
                "%d open cases, geometric mean %.2f, spread %.2f; without chromium(VI) %.2f and %.2f; covered %d of %d",
                open.size(),
                found[0],
                found[1],
                without[0],
                without[1],
                covered,
                open.size());
        assertTrue(page.replaceAll("\\s+", " ").contains(line), line + "\n" + all);
    }

    @Test
    void enclosedWithVentilationUnknownTakesTheHighestPublishedPercentile() {
        // 3.67 x 4.9^1.644854 = 50.1 mg/m3 (Pouzou 2015 Table 1, self-shielded)
        for (Case each : leavingOneOut()) {
            if (each.row().place().equals("enclosed")) {
                assertTrue(each.covered() || each.row().id().contains("self-shielded"), each.toString());
            }
        }
        PublishedExposure any = (PublishedExposure) ROWS.stream()
                .filter(r -> r instanceof PublishedExposure x && x.id().equals("pouzou-mma-enclosed"))
                .findFirst()
                .orElseThrow();
        Screening found = RoomEstimate.of(task(any), new ExposureTables(ROWS), "welding-fume")
                .screening()
                .orElseThrow();
        assertTrue(
                found.assumptions().stream()
                        .anyMatch(a -> a.contains("never below the highest published 95th percentile, 51 mg/m3")),
                found.assumptions().toString());
        assertTrue(found.governing().value().orElseThrow() >= 50.1 - 0.1);
        // The sealed box of old gave grams: the median now lies near what was measured.
        assertTrue(Math.exp(found.medianLog()) < 10, found.sentence());
    }
}
