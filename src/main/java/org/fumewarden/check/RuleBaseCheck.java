package org.fumewarden.check;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.fumewarden.codes.Affirmations;
import org.fumewarden.codes.CodeBook;
import org.fumewarden.codes.InputException;
import org.fumewarden.codes.Problem;
import org.fumewarden.codes.RuleFolder;
import org.fumewarden.codes.YamlFiles;
import org.fumewarden.engine.RuleBase;
import org.fumewarden.engine.WrittenFile;
import org.fumewarden.engine.WrittenRule;
import org.fumewarden.model.Count;

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
     * Checks everything in a scope. A table that cannot be read is the cause of whatever the scenarios would find: none is run
     * then, and what is wrong with the other tables is told beside it.
     *
     * @param whole the rule base as text
     * @param bases gives the compiled rule base of a code
     * @param scenarios folder of scenarios
     * @param sources the list of documents; that among the rules when not given
     * @param today no table can have been compared after it
     * @throws InputException when the code or the rule of the scope is not there
     */
    public static Report run(
            CheckScope scope,
            RuleFolder whole,
            Function<String, RuleBase> bases,
            Path scenarios,
            Optional<Path> sources,
            LocalDate today) {
        RuleFolder folder = scope.of(whole);
        List<Path> files = new ArrayList<>();
        Set<Problem> problems = new LinkedHashSet<>();
        try {
            files.addAll(scope.scenarios(scenarios, folder));
        } catch (InputException e) {
            problems.addAll(e.problems());
        }
        Set<Problem> unread = Lint.unread(folder);
        if (!unread.isEmpty()) {
            problems.addAll(unread);
            Set<String> named = unread.stream().map(Problem::file).collect(Collectors.toSet());
            TypedValues.check(folder.without(unread)).stream()
                    .filter(found -> !named.contains(found.file()))
                    .forEach(problems::add);
            return notRun(problems, folder, files.size());
        }
        Set<Problem> missing = MissingFiles.in(folder);
        if (!missing.isEmpty()) {
            return notRun(missing, folder, files.size());
        }
        List<Problem> looked = new ArrayList<>(Lint.check(folder, sources(folder, sources, problems)));
        looked.addAll(Affirmations.voided(whole, folder));
        looked.addAll(Affirmations.toCome(whole, today));
        looked.addAll(DaysToCome.in(folder, today));
        looked.addAll(TypedValues.check(folder));
        looked.addAll(ofProgram(folder));
        looked.stream().filter(scope::concerns).forEach(problems::add);
        problems.addAll(Placeholders.in(folder, folder.folders()));
        files.forEach(file -> problems.addAll(
                Placeholders.in(file.toString(), YamlFiles.text(file.toString(), YamlFiles.bytes(file)))));
        ScenarioRuns runs = ScenarioRuns.of(files, folder, bases);
        if (!runs.unusable().isEmpty()) {
            problems.addAll(runs.unusable());
            return notRun(problems, folder, runs.lost());
        }
        runs.runs().forEach(run -> problems.addAll(run.problems()));
        Coverage coverage =
                Coverage.of(rules(folder).stream().filter(scope::covers).toList(), runs.runs());
        problems.addAll(coverage.problems());
        DutyReach.problems(folder, runs.runs()).stream().filter(scope::owns).forEach(problems::add);
        List<String> counts = new ArrayList<>(List.of("scenarios " + runs.runs().size() + " run", coverage.counts()));
        counts.addAll(TypedValues.replaced(folder));
        return new Report(List.copyOf(problems), counts);
    }

    private static Report notRun(Set<Problem> causes, RuleFolder folder, int scenarios) {
        Set<Problem> problems = new LinkedHashSet<>(causes);
        problems.add(new Problem(
                folder.origin(),
                0,
                "",
                "leaves " + Count.of(scenarios, "scenario") + " that could not be run because of it.",
                "mend what is named above, then check again."));
        return new Report(List.copyOf(problems), List.of("scenarios 0 run of " + scenarios));
    }

    private static SourceList sources(RuleFolder folder, Optional<Path> file, Set<Problem> problems) {
        try {
            return file.map(SourceList::read).orElseGet(() -> SourceList.of(folder));
        } catch (InputException e) {
            problems.addAll(e.problems());
            return SourceList.of(RuleFolder.shipped());
        }
    }

    /** Only of rules that ship: whoever adds a code of their own cannot add names or mistakes to the program. */
    private static List<Problem> ofProgram(RuleFolder folder) {
        if (!folder.isShipped() || folder.codes().isEmpty()) {
            return List.of();
        }
        List<Problem> problems = new ArrayList<>(
                MissingNames.check(CodeBook.read(folder, folder.codes().get(0)).vocabulary()));
        problems.addAll(MistakesNamed.check(rules(folder), rules(RuleFolder.shipped())));
        return problems;
    }

    /** Checks only the text of rules and tables. */
    public static List<Problem> lint(RuleFolder folder, Path sources) {
        try {
            List<Problem> problems = new ArrayList<>(Lint.check(folder, SourceList.read(sources)));
            problems.addAll(Affirmations.voided(folder, folder));
            return List.copyOf(problems);
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
