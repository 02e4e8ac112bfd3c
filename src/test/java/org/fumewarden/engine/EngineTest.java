package org.fumewarden.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.fumewarden.advice.Advice;
import org.fumewarden.advice.Advisor;
import org.fumewarden.advice.Status;
import org.fumewarden.check.EditedRules;
import org.fumewarden.codes.InputException;
import org.fumewarden.codes.RuleFolder;
import org.fumewarden.codes.YamlFiles;
import org.fumewarden.report.AdviceJson;
import org.fumewarden.task.Task;
import org.fumewarden.task.TaskReader;
import org.fumewarden.trail.Step;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The engine decides by rules alone: order changes nothing, edits of the rules do. */
final class EngineTest {
    private static final String TASK = """
            title: Brackets
            code: gb
            on: %s
            task: {process: mag-solid-wire, base-metal: stainless-steel, coating: none, filler: plain, place: indoors,
              extraction: none, wear-time: PT30M, purpose: work, work-rate: moderate}
            atmosphere: {oxygen: 20.9 %%, explosive: false, immediately-dangerous: %s, eye-irritation: false}
            exposures:
              - {agent: manganese-respirable, twa: 0.12 mg/m3}
              - {agent: ozone, stel: %s}
            wearer: {facial-hair: false, spectacles: false, fit-tested: true, medically-cleared: true}
            """;
    private static final String CALM = TASK.formatted("2026-03-02", "false", "0.08 ppm");
    private static final String LIFTING = """
            rule "GB-NEED-990 a rule for this test lifts the floor for welding fume"
            @source("fumewarden") @clause("test") @confidence("practice") @overrides("GB-NEED-010")
            @says("Lifted.")
            when
              Answer( question == "place", value == "indoors" )
              $t : Threshold( id == "lifted-floor" )
            then
              insert( Need.floor( "welding-fume", $t.value() ) );
            end
            """;

    @TempDir
    private Path folder;

    @Test
    @Tag("ci")
    void shippedAndCompiledRulesGiveTheSameAdvice() throws IOException {
        Path rules = EditedRules.copy(folder);
        try (Stream<Path> files = Files.walk(rules)) {
            // What differs from the shipped file, were it by a remark, is compiled anew.
            for (Path file : files.filter(f -> f.toString().endsWith(".drl")).toList()) {
                Files.writeString(file, Files.readString(file) + "\n// a remark\n");
            }
        }
        String compiled = json(RuleBase.compiled(RuleFolder.at(rules), "gb"), CALM);
        assertEquals(withoutRevision(json(RuleBase.shipped("gb"), CALM)), withoutRevision(compiled));
    }

    @Test
    void aFolderThatIsTheShippedOneGivesTheSameAdviceByteForByte() {
        RuleBase same = RuleBase.compiled(RuleFolder.at(Path.of("rules")), "gb");
        assertEquals(json(RuleBase.shipped("gb"), CALM), json(same, CALM));
    }

    @Test
    @Tag("ci")
    void theOrderOfRulesInAFileChangesNothing() throws IOException {
        Path rules = EditedRules.copy(folder);
        for (String phase : List.of("need", "exclusion", "hazard", "filter", "measure", "selection")) {
            reverse(rules.resolve("shared/" + phase + ".drl"));
        }
        String mixed = json(RuleBase.compiled(RuleFolder.at(rules), "gb"), CALM);
        assertEquals(withoutRevision(json(RuleBase.shipped("gb"), CALM)), withoutRevision(mixed));
    }

    private static void reverse(Path file) throws IOException {
        String text = Files.readString(file);
        int first = text.indexOf("\nrule ");
        String[] rules = text.substring(first).split("(?m)^end$");
        StringBuilder reversed = new StringBuilder(text.substring(0, first));
        for (int i = rules.length - 1; i >= 0; i--) {
            if (!rules[i].isBlank()) {
                reversed.append(rules[i]).append("end\n");
            }
        }
        Files.writeString(file, reversed);
    }

    @Test
    @Tag("ci")
    void anEditedTableChangesTheOutcomeAndTheRevision() {
        Path rules = EditedRules.copy(folder);
        EditedRules.edit(
                rules,
                "gb/tables/policy.yaml",
                "{id: welding-fume-floor, value: 20",
                "{id: welding-fume-floor, value: 40");
        Advice edited = advise(RuleBase.compiled(RuleFolder.at(rules), "gb"), CALM);
        Advice shipped = advise(RuleBase.shipped("gb"), CALM);
        assertEquals("20", shipped.requiredFactor().value().toPlainString());
        assertEquals("40", edited.requiredFactor().value().toPlainString());
        assertNotEquals(shipped.revision(), edited.revision());
    }

    @Test
    @Tag("ci")
    void anOverriddenConclusionStaysInTheTrailButDecidesNothing() {
        Path rules = EditedRules.copy(folder);
        EditedRules.append(rules, "gb/need.drl", LIFTING);
        EditedRules.append(rules, "gb/tables/policy.yaml", "  - {id: lifted-floor, value: 1, unit: factor}\n");
        Advice advice = advise(RuleBase.compiled(RuleFolder.at(rules), "gb"), CALM);
        List<Step> lifted = advice.trail().steps().stream()
                .filter(s -> s.rule().equals("GB-NEED-010"))
                .toList();
        assertFalse(lifted.isEmpty());
        assertTrue(lifted.stream().allMatch(s -> s.overriddenBy().equals(Optional.of("GB-NEED-990"))));
        assertEquals("manganese-respirable", advice.requiredFactor().agent());
        assertEquals("2.4", advice.requiredFactor().value().toPlainString(), "0.12 / 0.05");
    }

    @Test
    void twoAnswersToOneQuestionAreAConflict() {
        // Ozone at 5 ppm reaches its immediately dangerous level (NIOSH list of IDLH values: ozone 5 ppm), whatever is
        // declared.
        Advice advice = advise(RuleBase.shipped("gb"), TASK.formatted("2026-03-02", "false", "5 ppm"));
        assertFalse(advice.conflicts().isEmpty());
        assertEquals(Status.DO_NOT_ENTER, advice.status());
    }

    @Test
    void aRuleIsSilentBeforeItsFirstDay() {
        // The change of enforcement for welding fume dates from February 2019 (HSE bulletin STSU1-2019).
        Advice before = advise(RuleBase.shipped("gb"), TASK.formatted("2019-01-31", "false", "0.08 ppm"));
        Advice after = advise(RuleBase.shipped("gb"), TASK.formatted("2019-02-01", "false", "0.08 ppm"));
        assertFalse(fired(before).contains("GB-NEED-010"));
        assertTrue(fired(after).contains("GB-NEED-010"));
    }

    @Test
    void aSwitchedOffRuleIsSilent() {
        Advisor advisor = new Advisor(RuleBase.shipped("gb"), java.util.Set.of("GB-NEED-010"));
        assertFalse(fired(advisor.advise(task(advisor.base(), CALM))).contains("GB-NEED-010"));
    }

    @Test
    void aRuleFileThatDoesNotCompileIsNamedWithItsLine() {
        Path rules = EditedRules.copy(folder);
        EditedRules.edit(rules, "gb/need.drl", "when\n", "when\n  $broken : Answer( question = = \"x\"\n");
        RuleFolder edited = RuleFolder.at(rules);
        InputException fault = assertThrows(InputException.class, () -> RuleBase.compiled(edited, "gb"));
        assertTrue(fault.getMessage().matches("(?s).*gb/need\\.drl:\\d+ .*\n\\p{Lu}.*"), fault.getMessage());
    }

    private static String json(RuleBase base, String text) {
        return AdviceJson.write(advise(base, text));
    }

    private static String withoutRevision(String json) {
        return json.replaceAll("\"revision\":\"[0-9a-f]+\"", "");
    }

    private static List<String> fired(Advice advice) {
        return advice.trail().steps().stream().map(Step::rule).distinct().toList();
    }

    private static Advice advise(RuleBase base, String text) {
        return new Advisor(base).advise(task(base, text));
    }

    private static Task task(RuleBase base, String text) {
        return new TaskReader(base.book().vocabulary())
                .read(YamlFiles.parse("task.yaml", text), "gb", Optional.empty());
    }
}
