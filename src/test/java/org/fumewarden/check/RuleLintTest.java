package org.fumewarden.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.fumewarden.codes.Problem;
import org.fumewarden.codes.RuleFolder;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The lint of rules and tables names file, line and rule of everything that breaks the rules for rules. */
final class RuleLintTest {
    private static final Path SOURCES = Path.of("rules/shared/sources.yaml");
    private static final String NEED = "shared/need.drl";
    private static final String RULE = """
            rule "SHARED-NEED-990 a sentence"
            @source("fumewarden") @clause("test") @confidence("practice")
            @says("%s")
            when
              %s
            then
              %s
            end
            """;

    @TempDir
    private Path folder;

    @Test
    void theRulesOfTheProjectAreClean() {
        assertEquals("", text(RuleBaseCheck.lint(RuleFolder.at(Path.of("rules")), SOURCES)));
    }

    /** What is replaced in a sound rule, by what, and what is then said of it. */
    private static final List<String> SPOILT = List.of(
            "@clause(\"test\")||has no @clause.",
            "@source(\"fumewarden\")||has no @source.",
            "@confidence(\"practice\")||has no @confidence.",
            "@confidence(\"practice\")|@confidence(\"reed\")|has the confidence \"reed\".",
            "@confidence(\"practice\")|@confidence(practice)|without quotes",
            "@confidence(\"practice\")|@confidence(\"practice\") @agent(\"x\")|has @agent, which nothing reads.",
            "@clause(\"test\")|@clause(\"test\") @clause(\"test\")|has @clause twice.",
            "@clause(\"test\")|@clause(\"test\") @from(\"2019\")|has no day in @from.",
            "@source(\"fumewarden\")|@source(\"fumewardn\")|cites \"fumewardn\", which is not in rules/shared/sources.yaml.",
            "{subject} needs|{subjekt} needs|says {subjekt}, which nothing fills.",
            "{subject} needs|{r.subjekt} needs|says {r.subjekt}, which nothing fills.",
            "SHARED-NEED-990 |SHARED-NEED-010 |is the id of another rule too",
            "SHARED-NEED-990 |SHARED-MEASURE-990 |is not the id of a rule in this file.",
            "SHARED-NEED-990 |SHARED-NEED-99 |is not the id of a rule in this file.",
            "SHARED-NEED-990 a sentence|SHARED-NEED-990|has no sentence after its id.",
            "$r : Ratio()|$r : Ratoi()|matches the unknown type Ratoi.",
            "$r : Ratio()|$r : Ratio( level > 5 )|has the number 5 in a condition.",
            "$r : Ratio()|not Ratio()|rests on nothing that is there.",
            "when|salience 10 when|has a part beyond when and then.",
            "when|no-loop true when|has a part beyond when and then.",
            "insert( Need.of( $r ) );|insert( Need.of( $r ) ); System.out.println( $r );|does more than conclude one thing.",
            "insert( Need.of( $r ) );|update( $r );|uses update, which is no word of the model.",
            "insert( Need.of( $r ) );|insertLogical( Need.of( $r ) );|uses insertLogical, which is no word of the model.",
            "insert( Need.of( $r ) );|insert( Need.floor( \"x\", new java.math.BigDecimal( \"20\" ) ) );|has the number \"20\" in quotes.",
            "insert( Need.of( $r ) );|insert( Need.floor( \"x\", BigDecimal.valueOf( 20 ) ) );|concludes the number 20.");

    @TestFactory
    Stream<DynamicTest> aSpoiltRuleIsNamed() {
        String sound = RULE.formatted("{subject} needs {value}", "$r : Ratio()", "insert( Need.of( $r ) );");
        return named(SPOILT, parts -> {
            assertTrue(sound.contains(parts[0]), parts[0]);
            return sound.replace(parts[0], parts[1]);
        });
    }

    @Test
    void aPackageThatIsNotThatOfItsFileIsNamed() {
        Path rules = EditedRules.copy(folder);
        EditedRules.edit(rules, NEED, "package rules.shared.need", "package rules.shared.needs");
        assertNames(rules, "/" + NEED + ":", "is in another package.");
    }

    /** A condition, and what is said of it. */
    private static final List<String> ASTRAY = List.of(
            "Ratio() not Need( basis == \"floor\" )|negates or counts Need, which its own phase concludes",
            "Answer( question == \"proces\" )|asks \"proces\", which is no question.",
            "Answer( question == \"place\", value == \"indors\" )|compares \"place\" with \"indors\"",
            "Answer( question == \"facial-hair\", value in ( \"true\", \"yes\" ) )|compares \"facial-hair\" with \"yes\"",
            "Measure( question == \"place\" )|reads \"place\" as Measure, but it is a choice.",
            "Answer( question == \"oxygen\" )|reads \"oxygen\" as Answer, but it is a percent.",
            "Unknown( question == \"oxigen\" )|asks \"oxigen\"",
            "Member( set == \"like-efects\" )|looks for a Member with set \"like-efects\"",
            "Threshold( id == \"hot-spot\" )|looks for a Threshold with id \"hot-spot\"",
            "DeviceClass( seal == \"tigt\" )|looks for a DeviceClass with seal \"tigt\"",
            "Gate( kind == \"imediately-dangerous\" )|waits for Gate with kind \"imediately-dangerous\"",
            "Offer( verdict == \"suitable\" )|reads Offer, which no rule up to its phase concludes.");

    @TestFactory
    Stream<DynamicTest> aRuleThatReadsWhatIsNotThereIsNamed() {
        return named(ASTRAY, parts -> RULE.formatted("a", parts[0], "insert( new Demand( \"a\", \"gas\" ) );"));
    }

    /** Puts a rule of its own for each case into one copy, and looks for what is said between its first line and its last. */
    private Stream<DynamicTest> named(List<String> cases, Function<String[], String> rule) {
        Path rules = EditedRules.copy(folder);
        List<DynamicTest> tests = new ArrayList<>();
        List<Problem> problems = new ArrayList<>();
        for (String each : cases) {
            String[] parts = each.split("\\|", -1);
            long first = lines(rules) + 1;
            String id = "SHARED-NEED-" + (900 + tests.size());
            EditedRules.append(rules, NEED, rule.apply(parts).replace("SHARED-NEED-990", id));
            long last = lines(rules);
            String message = parts[parts.length - 1];
            tests.add(DynamicTest.dynamicTest(
                    each,
                    () -> assertTrue(
                            problems.stream()
                                    .anyMatch(p -> p.file().endsWith("/" + NEED)
                                            && p.line() >= first
                                            && p.line() <= last
                                            && p.text().contains(message)),
                            () -> "no \"" + message + "\" in lines " + first + " to " + last + ":\n"
                                    + text(problems))));
        }
        problems.addAll(lint(rules));
        return tests.stream();
    }

    private static long lines(Path rules) {
        return EditedRules.text(rules, NEED).lines().count();
    }

    @Test
    void aLongRuleIsNamed() {
        Path rules = EditedRules.copy(folder);
        EditedRules.append(
                rules,
                NEED,
                RULE.formatted("a", "Ratio()\n".repeat(20).strip(), "insert( new Demand( \"a\", \"gas\" ) );"));
        assertNames(rules, "SHARED-NEED-990 ", "has 27 lines; at most 25.");
    }

    @Test
    void aBindingInsideANegationFillsNoSentence() {
        Path rules = EditedRules.copy(folder);
        String condition = "$r : Ratio() not Exposure( $x : level )";
        EditedRules.append(rules, NEED, RULE.formatted("{x}", condition, "insert( Need.of( $r ) );"));
        assertNames(rules, "SHARED-NEED-990 ", "says {x}, which nothing fills.");
    }

    @ParameterizedTest
    @CsvSource({
        "SHARED-NEED-980, 'overrides \"SHARED-NEED-980\", which is not a rule.'",
        "SHARED-MEASURE-010, 'overrides a rule of the phase measure.'"
    })
    void anOverrideWithoutItsTargetIsNamed(String target, String message) {
        Path rules = EditedRules.copy(folder);
        String rule = RULE.formatted("a", "Ratio()", "insert( new Demand( \"a\", \"gas\" ) );")
                .replace("@says", "@overrides(\"" + target + "\") @says");
        EditedRules.append(rules, NEED, rule);
        assertNames(rules, "SHARED-NEED-990 ", message);
    }

    @Test
    void aConclusionThatMayBeLiftedIsNotReadInItsPhase() {
        Path rules = EditedRules.copy(folder);
        String rule = RULE.formatted("a", "$r : Ratio()", "insert( Need.of( $r ) );")
                .replace("@says", "@overrides(\"SHARED-NEED-010\") @says");
        EditedRules.append(rules, NEED, rule);
        assertNames(rules, "SHARED-NEED-110 ", "reads Need in the phase in which SHARED-NEED-990 may still lift it.");
    }

    @Test
    void commentsAndSentencesAreNotCode() {
        Path rules = EditedRules.copy(folder);
        EditedRules.edit(rules, "shared/says_de.yaml", "\ncomplete: true", "\ncomplete: false");
        String before = text(lint(rules));
        String says = "update the global eval 25 {subject}";
        EditedRules.append(
                rules, NEED, RULE.formatted(says, "$r : Ratio()", "insert( Need.of( $r ) ); // salience 10"));
        EditedRules.append(rules, NEED, "// salience 10 is what we never write\n/* rule \"X\" when 7 then end */");
        assertEquals(before, text(lint(rules)));
    }

    @Test
    void theLineIsThatOfTheRule() throws IOException {
        Path rules = EditedRules.copy(folder);
        long line = 3 + Files.lines(rules.resolve(NEED)).count();
        EditedRules.append(
                rules,
                NEED,
                "\n"
                        + RULE.formatted("a", "$r : Ratio()", "insert( Need.of( $r ) );")
                                .replace("@clause(\"test\")", ""));
        String text = text(lint(rules));
        assertTrue(text.contains(NEED + ":" + line + " SHARED-NEED-990 has no @clause."), text);
    }

    private void assertNames(Path rules, String where, String message) {
        List<Problem> problems = lint(rules);
        assertTrue(
                problems.stream()
                        .anyMatch(p -> p.text().contains(where) && p.text().contains(message)),
                () -> "no \"" + where + " ... " + message + "\" in:\n" + text(problems));
    }

    private static List<Problem> lint(Path rules) {
        return RuleBaseCheck.lint(RuleFolder.at(rules), SOURCES);
    }

    private static String text(List<Problem> problems) {
        return problems.stream().map(Problem::text).collect(Collectors.joining("\n"));
    }
}
