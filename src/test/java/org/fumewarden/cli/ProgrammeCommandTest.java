package org.fumewarden.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.fumewarden.advice.Advice;
import org.fumewarden.advice.Advisor;
import org.fumewarden.advice.Bench;
import org.fumewarden.advice.Status;
import org.fumewarden.report.upkeep.TaskAdvice;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The written programme with advice of tasks, and fit tests as the code judges them. */
class ProgrammeCommandTest {
    private static final String TASK = "scenarios/tours/stainless-brackets.yaml";

    @TempDir
    private Path folder;

    @BeforeEach
    void registerTheYard() {
        run(
                "register",
                "site",
                "id=site",
                "employer=Tarn Haven Fabrication",
                "address=Quay Road 1",
                "code=gb",
                "monitoring-needed=false");
        run("register", "wearer", "id=W-07", "name=Sanna Teller");
    }

    private static final String SEVEN_OF_1500 = "exercises=1500, 1500, 1500, 1500, 1500, 1500, 1500";

    private CommandRun run(String... words) {
        List<String> all = new ArrayList<>(List.of(words));
        all.add("--store");
        all.add(folder.resolve("yard.db").toString());
        return CommandRun.of(all.toArray(String[]::new));
    }

    private CommandRun fitTest(String... more) {
        List<String> words = new ArrayList<>(List.of("log", "fit-test", "item=W-07", "by=Odran Pell", "result=passed"));
        words.addAll(List.of(more));
        return run(words.toArray(String[]::new));
    }

    private static Advice advised(Map<String, String> changes) {
        return new Bench(Path.of(TASK), changes, Optional.of("gb"), Optional.empty(), Advisor::shipped).advise();
    }

    @Test
    void theProgrammeHoldsTheAdviceOfATaskWithItsClauses() {
        CommandRun printed = run("record", "--sheet", "programme", "--task", TASK);
        assertEquals(0, printed.exit(), printed.err());
        String text = printed.out().replaceAll("\\s+", " ");
        assertTrue(text.contains(advised(Map.of()).title()), text);
        assertTrue(text.contains("Wear: powered hood"), text);
        CommandRun page = run("record", "--sheet", "programme", "--task", TASK, "--format", "html");
        assertTrue(page.out().contains("Wear: powered hood"), page.out());
    }

    @Test
    void aTaskGoesWithTheProgrammeOnly() {
        CommandRun refused = run("record", "W-07", "--task", TASK);
        assertEquals(2, refused.exit());
        assertTrue(refused.err().contains("--sheet programme"), refused.err());
    }

    @Test
    void adviceOfACompleteTaskIsSettledAndCitesItsClauses() {
        TaskAdvice advice = TaskAdvice.of(advised(Map.of()), org.fumewarden.report.html.Speech.ENGLISH);
        assertTrue(advice.settled());
        assertTrue(advice.sentences().stream().anyMatch(s -> s.startsWith("Wear: ")));
        assertTrue(
                advice.sentences().stream()
                        .filter(s -> !s.startsWith("Wear: ") && !s.startsWith("Open: "))
                        .allMatch(s -> s.endsWith("]")),
                advice.sentences().toString());
    }

    @Test
    void adviceThatStopsTheWorkIsPrintedAsAWarning() {
        Advice stopped = advised(Map.of("atmosphere.immediately-dangerous", "true"));
        assertTrue(stopped.status() != Status.COMPLETE, stopped.status().toString());
        TaskAdvice advice = TaskAdvice.of(stopped, org.fumewarden.report.html.Speech.ENGLISH);
        assertFalse(advice.settled());
        assertFalse(advice.warning().orElseThrow().isEmpty());
    }

    /** INDG479: a fit factor of 100 for a half mask and of 2000 for a full face mask. */
    @Test
    void theFaceDecidesWhichFactorIsEnough() {
        String[] measured = {"model=mask, size M", "method=quantitative, counter", SEVEN_OF_1500};
        CommandRun half = fitTest(measured[0], measured[1], measured[2], "face=half");
        assertTrue(half.out().contains(", passed."), half.out() + half.err());
        CommandRun full = fitTest("model=mask, size L", measured[1], measured[2], "face=full");
        assertTrue(full.out().contains(", failed.") && full.out().contains("2000"), full.out() + full.err());
        CommandRun unsaid = fitTest("model=mask, size S", measured[1], measured[2]);
        assertEquals(2, unsaid.exit());
        assertTrue(unsaid.err().contains("face=half or face=full"), unsaid.err());
    }

    /** INDG479: qualitative methods are for half masks and filtering facepieces. */
    @Test
    void aQualitativeTestOfAFullFaceMaskFails() {
        assertTrue(fitTest("model=mask, size M", "method=qualitative, bitter aerosol", "face=half")
                .out()
                .contains(", passed."));
        assertTrue(fitTest("model=mask, size L", "method=qualitative, bitter aerosol", "face=full")
                .out()
                .contains(", failed."));
    }

    @Test
    void anotherFaceIsRefused() {
        CommandRun refused = fitTest("model=mask, size M", "method=qualitative, bitter aerosol", "face=round");
        assertEquals(2, refused.exit());
        assertTrue(refused.err().contains("round"), refused.err());
    }
}
