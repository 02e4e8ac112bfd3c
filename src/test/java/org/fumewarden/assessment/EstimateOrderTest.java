package org.fumewarden.assessment;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.fumewarden.codes.CodeBook;
import org.fumewarden.codes.RuleFolder;
import org.fumewarden.exposure.Screening;
import org.fumewarden.task.TaskReader;
import org.fumewarden.task.TaskTree;
import org.junit.jupiter.api.Test;

/** What must hold of estimates whatever the studies say: enclosed is not below open, a part not above its whole. */
class EstimateOrderTest {
    private static final CodeBook BOOK = CodeBook.read(RuleFolder.at(Path.of("rules")), "gb");
    private static final ExposureTables FIGURES = new ExposureTables(BOOK.rows(LocalDate.of(2026, 11, 29)));
    private static final TaskReader READER = new TaskReader(BOOK.vocabulary());
    private static final List<String> PROCESSES = List.of(
            "manual-metal-arc",
            "mag-solid-wire",
            "mig-mag-pulsed",
            "flux-cored-gas",
            "flux-cored-self-shielded",
            "tig",
            "oxyfuel-cutting",
            "plasma-cutting",
            "air-carbon-arc-gouging");

    private static Optional<Screening> estimate(String process, String place, String agent, String more) {
        String text = "title: t\ncode: gb\non: 2026-11-29\ntask: {process: " + process
                + ", base-metal: stainless-steel, place: " + place + "}\n" + more;
        return RoomEstimate.of(READER.read(TaskTree.parse("task", text), "gb", Optional.empty()), FIGURES, agent)
                .screening();
    }

    private static double median(Screening screening) {
        return screening.percentile(0.5).value().orElseThrow();
    }

    private static double counts(Screening screening) {
        return screening.governing().value().orElseThrow();
    }

    @Test
    void enclosedIsNeverBelowTheOpenOfTheSameProcess() {
        for (String process : PROCESSES) {
            Screening open = estimate(process, "indoors", "welding-fume", "").orElseThrow();
            Screening enclosed =
                    estimate(process, "enclosed", "welding-fume", "").orElseThrow();
            assertTrue(median(enclosed) >= median(open) * (1 - 1e-9), process);
            assertTrue(counts(enclosed) >= counts(open), process);
        }
    }

    @Test
    void noMetalIsAboveTheFumeThatHoldsIt() {
        int seen = 0;
        for (String process : PROCESSES) {
            for (String place : List.of("indoors", "enclosed")) {
                Screening fume = estimate(process, place, "welding-fume", "").orElseThrow();
                for (String metal :
                        List.of("iron-oxide", "manganese-respirable", "chromium-vi", "chromium-iii", "nickel")) {
                    Optional<Screening> part = estimate(process, place, metal, "");
                    if (part.isPresent()) {
                        seen++;
                        assertTrue(median(part.get()) <= median(fume) * (1 + 1e-9), process + " " + metal);
                        assertTrue(counts(part.get()) <= counts(fume) * (1 + 1e-9), process + " " + metal);
                    }
                }
            }
        }
        assertTrue(seen > 40, seen + " metals estimated");
    }

    /** The most that ships with poor ventilation show is 5.26 / 2.40 = 2.19 (Pouzou 2015 Table 1), rounded up to 2.2. */
    @Test
    void aRoomWorseThanAnyStudiedTakesTheHighestPublishedFigureAndNotGrams() {
        Screening usual = estimate("tig", "indoors", "welding-fume", "estimate: {arc-time: 10 %}\n")
                .orElseThrow();
        Screening cell = estimate(
                        "tig",
                        "indoors",
                        "welding-fume",
                        "estimate: {room-volume: 10 m3, air-changes: 0.5, arc-time: 10 %}\n")
                .orElseThrow();
        assertEquals(2.2, median(cell) / median(usual), 1e-9);
        // 3.67 x 4.9^1.644854 = 50.1 mg/m3
        assertEquals(50.1, counts(cell), 0.1);
        assertTrue(cell.assumptions().stream().anyMatch(a -> a.startsWith("A room worse than any that was studied")));
    }

    @Test
    void whereNoWireIsNamedTheUsualOneIsTakenAndSaid() {
        Screening said = estimate("mag-solid-wire", "indoors", "nickel", "").orElseThrow();
        assertTrue(said.assumptions().stream().anyMatch(a -> a.contains("ER316 is assumed")), said.toString());
        Screening named = estimate("mag-solid-wire", "indoors", "nickel", "estimate: {consumable: er316}\n")
                .orElseThrow();
        assertEquals(median(said), median(named), 1e-12);
        assertTrue(named.assumptions().stream().noneMatch(a -> a.contains("is assumed")));
    }
}
