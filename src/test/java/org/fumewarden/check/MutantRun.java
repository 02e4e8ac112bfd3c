package org.fumewarden.check;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.drools.model.Rule;
import org.fumewarden.engine.Budget;
import org.fumewarden.engine.MutatedRules;
import org.fumewarden.engine.RuleBase;
import org.fumewarden.engine.WrittenRule;

/**
 * Runs mutants against the scenarios. A mutant is killed by the first scenario that is no longer as expected; those
 * in which its rule fires or is expected silent come first, then all others of the codes that hold the rule.
 *
 * @param refused mutants that do not compile
 */
record MutantRun(Set<String> killed, Set<String> survivors, Set<String> refused) {
    /** Verdicts as they fall, so that a long run can be watched. */
    private static final Path VERDICTS = Path.of("target/mutants.txt");

    private static final int BATCH = 100;

    /** Comparisons and firings for one scenario: over ten times what the busiest rule as shipped needs. */
    private static final long MOST_STEPS = 2_000_000;

    private static final Map<Path, Scenario> READ = new HashMap<>();

    /** Tries mutants, but not those whose survival is known. */
    static MutantRun of(List<Mutant> mutants, Set<String> known) {
        MutantRun run = new MutantRun(new TreeSet<>(), new TreeSet<>(), new TreeSet<>());
        start();
        for (int from = 0; from < mutants.size(); from += BATCH) {
            List<Mutant> batch = mutants.subList(from, Math.min(mutants.size(), from + BATCH));
            Map<String, Rule> rules = compiled(batch);
            for (int i = 0; i < batch.size(); i++) {
                Mutant mutant = batch.get(i);
                Rule rule = rules.get(mutant.drlPackage(i));
                String verdict = known.contains(mutant.key())
                        ? "survived as listed"
                        : rule == null ? "refused" : verdict(mutant, rule);
                run.set(verdict).add(mutant.key());
                note(mutant.key() + ": " + verdict + " | " + mutant.touched());
            }
        }
        return run;
    }

    private Set<String> set(String verdict) {
        return verdict.startsWith("survived") ? survivors : verdict.equals("refused") ? refused : killed;
    }

    String counts() {
        return "refused by the compiler " + refused.size() + ", killed " + killed.size() + ", survived "
                + survivors.size();
    }

    private static Map<String, Rule> compiled(List<Mutant> mutants) {
        Map<String, String> texts = new LinkedHashMap<>();
        for (int i = 0; i < mutants.size(); i++) {
            String name = mutants.get(i).drlPackage(i);
            texts.put(name, mutants.get(i).text(name));
        }
        return MutatedRules.compile(texts);
    }

    private static String verdict(Mutant mutant, Rule rule) {
        Map<String, RuleBase> changed = new HashMap<>();
        ScenarioRunner runner = new ScenarioRunner(code -> changed.computeIfAbsent(
                code,
                c -> MutatedRules.replace(RuleBase.shipped(c), mutant.rule().phase(), rule)));
        return inOrder(mutant.rule())
                .filter(file -> {
                    Budget.allow(MOST_STEPS);
                    return breaks(runner, file);
                })
                .findFirst()
                .map(file -> (Budget.left() < 0 ? "killed, endless work in " : "killed by ") + file.getFileName())
                .orElse("survived");
    }

    private static Stream<Path> inOrder(WrittenRule rule) {
        return ShippedRuns.tellingOf(
                rule.id(),
                List.of(
                        run -> run.silent().contains(rule.id()) || run.fired().contains(rule.id()),
                        run -> RuleBase.shipped(code(run)).book().folders().contains(rule.folder())));
    }

    private static String code(ScenarioRun run) {
        return run.shown().orElseThrow().code();
    }

    /** A rule that cannot be carried out any more counts as found. */
    private static boolean breaks(ScenarioRunner runner, Path file) {
        try {
            return !runner.run(READ.computeIfAbsent(file, Scenario::read))
                    .problems()
                    .isEmpty();
        } catch (RuntimeException e) {
            return true;
        }
    }

    private static void start() {
        try {
            Files.createDirectories(VERDICTS.getParent());
            Files.writeString(VERDICTS, "");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void note(String line) {
        try {
            Files.writeString(VERDICTS, line + "\n", StandardOpenOption.APPEND);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
