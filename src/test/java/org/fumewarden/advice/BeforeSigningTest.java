package org.fumewarden.advice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.fumewarden.model.AssignedFactor;
import org.fumewarden.model.Confidence;
import org.fumewarden.model.Figure;
import org.fumewarden.model.Row;
import org.fumewarden.task.Task;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What somebody should compare before signing, and until when the values are good. */
final class BeforeSigningTest {
    private static final String STAINLESS = """
            title: Stainless brackets
            code: %s
            on: %s
            task: {process: mag-solid-wire, base-metal: stainless-steel, coating: none, place: indoors, extraction: none}
            atmosphere: {immediately-dangerous: %s}
            exposures:
              - {agent: %s, twa: 0.02 mg/m3}
            """;

    private static Advice advise(String code, String on, String dangerous, String agent) {
        return Bench.ofText("task", STAINLESS.formatted(code, on, dangerous, agent), Advisor::shipped)
                .advise();
    }

    private static List<String> rows(Advice advice) {
        return advice.compareBeforeSigning().stream().map(ToCompare::row).toList();
    }

    @Test
    void aSheetThatForbidsEntryListsTheFactorsOfWhatItNames() {
        Advice advice = advise("gb", "2026-03-02", "true", "chromium-vi");
        assertEquals(Status.DO_NOT_ENTER, advice.status());
        assertTrue(
                rows(advice).contains("gb-factors#self-contained-positive/any"),
                rows(advice).toString());
    }

    @Test
    void anOpenSheetListsTheLimitThatItWasReckonedWith() {
        Advice advice = advise("gb", "2026-03-02", "unknown", "chromium-vi");
        assertEquals(Status.INCOMPLETE, advice.status());
        assertTrue(
                rows(advice).contains("gb-limits#chromium-vi/twa"), rows(advice).toString());
    }

    /** Australian limits of 2024: nickel in mg/m3 needs no volume of a mole, nitrogen dioxide, 3 ppm, does. */
    @ParameterizedTest
    @org.junit.jupiter.params.provider.CsvSource({"au, nickel, false", "au, nitrogen-dioxide, true"})
    void theVolumeOfAMoleIsListedOnlyWhereSomethingIsInPpm(String code, String agent, boolean listed) {
        List<String> rows = rows(advise(code, "2026-03-02", "unknown", agent));
        assertEquals(listed, rows.stream().anyMatch(r -> r.endsWith("#molar-volume")), rows.toString());
    }

    /** What is listed changes the answer when it is another, what is counted does not: each is tried on its own, in every tour. */
    @ParameterizedTest
    @MethodSource("tours")
    void aValueIsListedWhereAnotherWouldChangeTheAnswer(Path tour) {
        Bench bench = new Bench(tour, Map.of(), Optional.empty(), Optional.empty(), Advisor::shipped);
        Advisor advisor = Advisor.shipped(bench.code());
        Task task = bench.task(bench.code(), Map.of());
        Advice advice = advisor.advise(task);
        Upshot now = Upshot.of(advice);
        for (ToCompare value : advice.compareBeforeSigning()) {
            Row row = advisor.base().rowsOn(task.on()).stream()
                    .filter(r -> r.ref().address().equals(value.row()))
                    .findFirst()
                    .orElseThrow();
            assertTrue(
                    row.ref().citation().confidence() == Confidence.MEMORY
                            || !row.ref().beside().isEmpty(),
                    value.row());
            if (advice.status() == Status.INCOMPLETE || advice.status() == Status.CONFLICT) {
                continue;
            }
            boolean changes = others(advisor, row)
                    .anyMatch(other -> !now.unlike(advisor.upshot(task, advisor.assess(task), row, other))
                            .isEmpty());
            assertEquals(changes, value.turns(), value.toString());
        }
    }

    /** How long a filter may be open is a figure of a table too, so a trial of another one reaches the unit in hand. */
    @Test
    void aTrialReachesWhatTheFiguresOfTheUnitComeTo() {
        String text = STAINLESS.formatted("gb", "2026-03-02", "false", "nickel")
                + "kit: {class-in-hand: th3, filter-opened: 2025-08-01}\n";
        Bench bench = Bench.ofText("task", text, Advisor::shipped);
        Advisor advisor = Advisor.shipped("gb");
        Task task = bench.task("gb", Map.of());
        Figure months = (Figure) advisor.base().rowsOn(task.on()).stream()
                .filter(r -> r instanceof Figure f
                        && "opened-months".equals(f.cells().get("id")))
                .findFirst()
                .orElseThrow();
        Map<String, String> cells = new HashMap<>(months.cells());
        cells.put("months", "12");
        Row longer = new Figure(months.ref(), months.kind(), cells, months.place());
        Upshot now = Upshot.of(advisor.advise(task));
        assertTrue(now.unlike(advisor.upshot(task, advisor.assess(task), months, Optional.of(longer)))
                .contains("another verdict on the unit"));
    }

    /** The next values; of a factor the next lower one, which no class of that factor may hide behind. */
    private static Stream<Optional<Row>> others(Advisor advisor, Row row) {
        if (!(row instanceof AssignedFactor factor)) {
            return Neighbours.of(row).stream().map(Neighbours.Neighbour::row);
        }
        return advisor.base().rowsOn(LocalDate.of(2026, 3, 2)).stream()
                .filter(AssignedFactor.class::isInstance)
                .map(f -> ((AssignedFactor) f).factor())
                .filter(f -> f.compareTo(factor.factor()) < 0)
                .max(Comparator.naturalOrder())
                .map(f -> (Row)
                        new AssignedFactor(factor.ref(), factor.deviceClass(), factor.against(), f, factor.provided()))
                .map(Optional::of)
                .stream();
    }

    static Stream<Path> tours() throws IOException {
        try (Stream<Path> files = Files.list(Path.of("scenarios/tours"))) {
            return files.filter(f -> f.toString().endsWith(".yaml")).sorted().toList().stream();
        }
    }

    /** The stricter value stands in the directive, the milder in the British list of 2020: each is named with its document. */
    @Test
    void theDocumentNamedIsTheOneThatHoldsTheValue() {
        ToCompare chromium = advise("gb", "2026-03-02", "false", "chromium-vi").compareBeforeSigning().stream()
                .filter(c -> c.row().equals("gb-limits#chromium-vi/twa"))
                .findFirst()
                .orElseThrow();
        assertTrue(chromium.document().startsWith("Directive 2004/37/EC"), chromium.toString());
        assertTrue(chromium.place().contains("17 January 2025"), chromium.toString());
        assertTrue(
                chromium.value().contains("0.005 mg/m3")
                        && chromium.value().endsWith("another document gives 0.01 (EH40/2005 Table 1, 4th ed. 2020)"),
                chromium.toString());
    }

    /** The European limit of cadmium changes on 11 July 2027 (Directive 2004/37/EC Annex III). */
    @Test
    void exactlyTwelveMonthsAreWithinTwelveMonths() {
        assertEquals(
                Optional.of(LocalDate.of(2027, 7, 10)),
                advise("fi", "2026-07-10", "false", "cadmium").endsSoon());
        assertEquals(
                Optional.empty(), advise("fi", "2026-07-09", "false", "cadmium").endsSoon());
    }
}
