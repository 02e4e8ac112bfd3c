package org.fumewarden.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.fumewarden.cli.CommandRun;
import org.fumewarden.codes.CodeBook;
import org.fumewarden.codes.Problem;
import org.fumewarden.codes.RuleFolder;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Follows the pages docs/how-to-*.md in a copy of rules and scenarios: the check names each step that is left out. */
@Tag("long")
final class HowToTest {
    private static final String FIRST = "table,row,cell,value,source\n";

    @TempDir
    private Path folder;

    private Path rules;
    private Path scenarios;

    @BeforeEach
    void copy() {
        rules = folder.resolve("rules");
        scenarios = folder.resolve("scenarios");
        EditedRules.folder(Path.of("rules"), rules);
        EditedRules.folder(Path.of("scenarios"), scenarios);
    }

    private CommandRun check(String option, String value) {
        return CommandRun.of("check", "--rules", rules.toString(), "--scenarios", scenarios.toString(), option, value);
    }

    private void asks(CommandRun run, String words) {
        assertEquals(2, run.exit(), run.out() + run.err());
        assertTrue(run.out().contains(words), run.out());
    }

    private void isClean(CommandRun run) {
        assertEquals(0, run.exit(), run.out() + run.err());
        assertTrue(run.out().endsWith("findings 0\n"), run.out());
    }

    private void typed(String... lines) throws IOException {
        Files.writeString(folder.resolve(RuleFolder.TYPED), FIRST + String.join("\n", lines) + "\n");
    }

    private static String text(List<Problem> problems) {
        return problems.stream().map(Problem::text).collect(Collectors.joining("\n"));
    }

    /** Tin: 2 mg/m3 until the invented change, 1 mg/m3 from then on. */
    @Test
    void aLimitChangesOnADay() throws IOException {
        EditedRules.edit(rules, "gb/tables/limits.yaml", "{agent: tin, ", "{agent: tin, until: 2030-01-01, ");
        EditedRules.append(rules, "gb/tables/limits.yaml", "  - {agent: tin, unit: mg/m3, twa: 1, from: 2030-01-01}\n");
        asks(check("--code", "gb"), "Add a line gb-limits,tin from 2030-01-01,twa,VALUE,DOCUMENT");
        typed(
                "gb-limits,tin from 2030-01-01,twa,1,invented",
                "gb-limits,tin from 2030-01-01,unit,mg/m3,invented",
                "gb-limits,tin,until,2030-01-01,invented");
        isClean(check("--code", "gb"));
    }

    @Test
    void anAgentIsAdded() throws IOException {
        EditedRules.append(
                rules,
                "shared/tables/agents.yaml",
                "  - {id: hull-dust, name: hull dust, form: particle, cas: none, note: \"invented\"}\n");
        EditedRules.append(rules, "gb/tables/limits.yaml", "  - {agent: hull-dust, unit: mg/m3, twa: 3}\n");
        CommandRun begun = check("--code", "gb");
        asks(begun, "Add a line gb-limits,hull-dust,twa,VALUE,DOCUMENT");
        asks(begun, "hull-dust has neither a danger level under gb nor a row that says there is none.");
        asks(begun, "gb-limits,hull-dust,unit,VALUE,DOCUMENT");
        typed(
                "danger-levels-none,danger-levels invented,agents,hull-dust,invented",
                "agents,hull-dust,form,particle,invented",
                "agents,hull-dust,name,hull dust,invented",
                "gb-limits,hull-dust,twa,3,invented",
                "gb-limits,hull-dust,unit,mg/m3,invented");
        EditedRules.append(
                rules,
                "shared/tables/danger-levels-none.yaml",
                "  - {list: danger-levels, searched: invented, agents: [hull-dust]}\n");
        isClean(check("--code", "gb"));
        assertEquals(
                1,
                MissingNames.check(CodeBook.read(RuleFolder.at(rules), "gb").vocabulary())
                        .size());
    }

    @Test
    void aRuleIsAdded() throws IOException {
        String[] places = {"--rules", rules.toString(), "--scenarios", scenarios.toString()};
        CommandRun made = CommandRun.of(Stream.concat(Stream.of("new", "rule", "gb", "caution"), Stream.of(places))
                .toArray(String[]::new));
        assertEquals(0, made.exit(), made.err());
        String id = made.out().replaceFirst("(?s).*(GB-CAUTION-\\d+)-fires\\.yaml.*", "$1");
        CommandRun raw = check("--rule", id);
        asks(raw, "give-a-source is not filled in.");
        CommandRun advice =
                CommandRun.of("advise", "scenarios/tours/stainless-brackets.yaml", "--rules", rules.toString());
        assertEquals(2, advice.exit(), "no sheet on rules that are not filled in");
        assertTrue(advice.err().contains("is not filled in."), advice.err());
        CommandRun page = CommandRun.of("serve", "--port", "0", "--rules", rules.toString());
        assertEquals(2, page.exit(), "no page on rules that are not filled in");
        assertTrue(page.err().contains("give-a-source is not filled in."), page.err());
        fillIn(rules.resolve("gb/caution.drl"));
        fillIn(scenarios.resolve("gb/" + id + "-fires.yaml"));
        fillIn(scenarios.resolve("gb/" + id + "-fires-not.yaml"));
        asks(check("--rule", id), id + " has no sentence here");
        EditedRules.append(rules, "gb/says_de.yaml", "  " + id + ": Erfunden.\n");
        isClean(check("--rule", id));
        Files.delete(scenarios.resolve("gb/" + id + "-fires-not.yaml"));
        asks(check("--rule", id), "is expected to be silent in no scenario.");
        String card = text(RuleBaseCheck.lint(RuleFolder.at(rules), rules.resolve("shared/sources.yaml")));
        assertEquals("", card);
    }

    @Test
    void aCodeIsAdded() throws IOException {
        CommandRun made =
                CommandRun.of("new", "code", "tarn", "--rules", rules.toString(), "--scenarios", scenarios.toString());
        assertEquals(0, made.exit(), made.err());
        asks(check("--code", "tarn"), "give-a-name is not filled in.");
        try (Stream<Path> files =
                Stream.concat(Files.walk(rules.resolve("tarn")), Files.walk(scenarios.resolve("tarn")))) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                fillIn(file);
            }
        }
        EditedRules.edit(rules, "tarn/tables/limits.yaml", "rows: []", "rows:\n  - {agent: tin, unit: mg/m3, twa: 1}");
        asks(check("--code", "tarn"), "Add a line tarn-limits,tin,twa,VALUE,DOCUMENT");
        typed("tarn-limits,tin,twa,1,invented", "tarn-limits,tin,unit,mg/m3,invented");
        isClean(check("--code", "tarn"));
    }

    /** What a person would write in the place of the words of the scaffold. */
    private static void fillIn(Path file) throws IOException {
        Files.writeString(
                file,
                Files.readString(file)
                        .replace("give-a-source", "fumewarden")
                        .replace("give-a-process", "mag-solid-wire")
                        .replaceAll("(give-an?|name-the|say-(what|why|which))-[a-z-]+", "invented for a test"));
    }
}
