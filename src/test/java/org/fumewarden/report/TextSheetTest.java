package org.fumewarden.report;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.fumewarden.advice.Advice;
import org.fumewarden.advice.Bench;
import org.fumewarden.cli.CommandRun;
import org.fumewarden.engine.RuleBase;
import org.fumewarden.model.Citation;
import org.fumewarden.model.FactorInForce;
import org.fumewarden.model.Settlement;
import org.fumewarden.report.answer.AdviceSheet;
import org.fumewarden.report.html.Words;
import org.fumewarden.report.sheet.TextForm;
import org.fumewarden.trail.Premise;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The first lines of the sheet, which are what a person in a hurry reads. */
final class TextSheetTest {
    private static final Path SCENARIOS = Path.of("scenarios");

    private static String sheet(Path task, String... more) {
        String[] arguments = new String[2 + more.length];
        arguments[0] = "advise";
        arguments[1] = task.toString();
        System.arraycopy(more, 0, arguments, 2, more.length);
        return CommandRun.of(arguments).out().replaceAll("\\s+", " ");
    }

    @Test
    void whatBarsEveryClassStandsInTheState() {
        String said = sheet(SCENARIOS.resolve("tours/stainless-brackets.yaml"), "--set", "wearer.trained=false");
        assertTrue(
                said.contains(
                        "STATE STOP. This wearer must not do this work. - The wearer is not trained in the use of a respirator"),
                said);
        assertTrue(said.contains("WEAR This person must not do this work"), said);
        assertFalse(said.contains("Possible once the questions are answered"), said);
    }

    @Test
    void aDayLongAfterTheRulesWereComparedIsSaid() {
        Path task = SCENARIOS.resolve("tours/stainless-brackets.yaml");
        String later = "The rules were compared with their documents last on 2026-11-25; later changes are not known";
        assertTrue(sheet(task, "--on", "2099-12-31").contains(later), sheet(task, "--on", "2099-12-31"));
        assertFalse(sheet(task).contains(later), sheet(task));
    }

    @Test
    void whatNoFigureCountsStandsBesideTheFactor() {
        String said = sheet(SCENARIOS.resolve("us/SHARED-MEASURE-080-judged-not.yaml"));
        assertTrue(
                said.contains("Single members of the group have limits. Find out which one it is: isocyanates"), said);
    }

    @Test
    void aNeedThatCannotBeWorkedOutIsNoLeaveToGoWithout() throws IOException {
        Path task = SCENARIOS.resolve("us/US-ACCOUNT-010-no-limit-not.yaml");
        assertTrue(Files.readString(task).contains("coating: polyurethane-paint"), "the coat whose gas has no limit");
        String said = sheet(task);
        assertTrue(said.contains("How much protection is needed cannot be worked out yet."), said);
        assertFalse(said.contains("do not call for a respirator"), said);
    }

    /** A value that an officer cannot find in its document cannot be compared by him; our own requirement. */
    @ParameterizedTest
    @MethodSource("org.fumewarden.report.AnswerPageTest#tours")
    void theAnnexNamesDocumentClauseAndEditionOfEachValue(Path tour) {
        Bench bench = AnswerPageTest.bench(tour);
        Advice advice = bench.advise();
        RuleBase base = bench.advisor(bench.code()).base();
        Map<String, Citation> cited = new HashMap<>();
        base.rowsOn(advice.on())
                .forEach(row -> cited.put(row.ref().address(), row.ref().citation()));
        String annex = TextForm.write(AdviceSheet.of(bench, advice, Words.in("en"), true))
                .replaceAll("\\s+", " ");
        Stream<String> limits = advice.accounts().stream()
                .filter(line ->
                        line.account().factor().isPresent() && line.account().kind() != Settlement.BOUNDED)
                .map(line -> line.account().by());
        Stream<String> factors = advice.trail()
                .concluding(FactorInForce.class)
                .flatMap(step -> step.premises().stream())
                .filter(premise -> premise.kind().equals("row"))
                .map(Premise::address);
        List<Citation> values = Stream.concat(limits, factors)
                .filter(cited::containsKey)
                .map(cited::get)
                .filter(value ->
                        !value.source().equals("fumewarden") && !value.source().equals("practice"))
                .toList();
        assertFalse(values.isEmpty(), tour.toString());
        for (Citation value : values) {
            String place = base.book().documents().get(value.source()).title() + ", " + value.place();
            assertTrue(annex.contains(place), tour + ": " + place);
        }
    }
}
