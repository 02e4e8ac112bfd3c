package org.fumewarden.check;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;
import org.fumewarden.codes.CodeBook;
import org.fumewarden.codes.InputException;
import org.fumewarden.codes.Problem;
import org.fumewarden.codes.RuleFolder;
import org.fumewarden.codes.YamlFiles;
import org.fumewarden.engine.RuleBase;
import org.fumewarden.engine.WrittenFile;
import org.fumewarden.engine.WrittenRule;

/** The check that a person editing rules runs, and the gate runs too: lint, scenarios, coverage. */
public final class RuleBaseCheck {
    /**
     * What was found.
     *
     * @param counts what was looked at, in numbers
     */
    public record Report(List<Problem> problems, List<String> counts) {
        public Report {
            problems = List.copyOf(problems);
            counts = List.copyOf(counts);
        }
    }

    private RuleBaseCheck() {}

    /**
     * Checks everything in a scope.
     *
     * @param whole the rule base as text
     * @param bases gives the compiled rule base of a code
     * @param scenarios folder of scenarios
     * @param sources the list of documents
     * @throws InputException when the code or the rule of the scope is not there
     */
    public static Report run(
            CheckScope scope, RuleFolder whole, Function<String, RuleBase> bases, Path scenarios, Path sources) {
        RuleFolder folder = scope.of(whole);
        Set<Problem> problems = new LinkedHashSet<>();
        Stream.of(lint(folder, sources), TypedValues.check(folder), names(folder))
                .flatMap(List::stream)
                .filter(scope::concerns)
                .forEach(problems::add);
        problems.addAll(Placeholders.in(folder, folder.folders()));
        List<String> counts = new ArrayList<>();
        List<ScenarioRun> runs = List.of();
        try {
            List<Path> files = scope.scenarios(scenarios, folder);
            files.forEach(file -> problems.addAll(
                    Placeholders.in(file.toString(), YamlFiles.text(file.toString(), YamlFiles.bytes(file)))));
            runs = files.stream().map(new ScenarioRunner(bases)::run).toList();
        } catch (InputException e) {
            problems.addAll(e.problems());
        }
        runs.forEach(run -> problems.addAll(run.problems()));
        Coverage coverage =
                Coverage.of(rules(folder).stream().filter(scope::covers).toList(), runs);
        problems.addAll(coverage.problems());
        DutyReach.problems(folder, runs).stream().filter(scope::owns).forEach(problems::add);
        counts.add("scenarios " + runs.size() + " run");
        counts.add(coverage.counts());
        return new Report(List.copyOf(problems), counts);
    }

    /** Only of rules that ship: whoever adds a code of their own cannot add names to the program. */
    private static List<Problem> names(RuleFolder folder) {
        return folder.isShipped() && !folder.codes().isEmpty()
                ? MissingNames.check(
                        CodeBook.read(folder, folder.codes().get(0)).vocabulary())
                : List.of();
    }

    /** Checks only the text of rules and tables. */
    public static List<Problem> lint(RuleFolder folder, Path sources) {
        try {
            return Lint.check(folder, SourceList.read(sources));
        } catch (InputException e) {
            return e.problems();
        }
    }

    static List<WrittenRule> rules(RuleFolder folder) {
        return WrittenFile.readAll(folder).stream()
                .flatMap(f -> f.rules().stream())
                .toList();
    }
}
