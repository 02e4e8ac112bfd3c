package org.fumewarden.check;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ConcurrentSkipListSet;
import java.util.stream.Collectors;
import org.drools.model.Rule;
import org.fumewarden.codes.RuleFolder;
import org.fumewarden.engine.MutatedRules;
import org.fumewarden.engine.RuleBase;
import org.junit.jupiter.api.Test;

/**
 * Each comparison of each rule, flipped, breaks a scenario or is listed with a reason. The gate tries a sample
 * ({@code -Dfumewarden.mutants=40 -Dfumewarden.seed=...}); {@code mvn verify -Psoundness} tries all.
 */
final class FlippedComparisonsTest {
    private static final Path LISTED = Path.of("docs/mutants.txt");
    private static final Path FOUND = Path.of("target/mutants.txt");
    private static final int SAMPLE = Integer.getInteger("fumewarden.mutants", 40);
    private static final long SEED = Long.getLong("fumewarden.seed", 20260302L);
    private static final int BATCH = 100;

    /** Scenarios tried at most for a mutant: its own first, then those in which the rule fires or is expected silent. */
    private static final int MOST = 40;

    private final Map<String, RuleBase> bases = new ConcurrentHashMap<>();
    private final Map<String, List<Path>> reached = new HashMap<>();

    private RuleBase base(String code) {
        return bases.computeIfAbsent(code, RuleBase::shipped);
    }

    @Test
    void theListNamesMutantsThatStillExist() throws IOException {
        Set<String> known = Mutant.all(RuleFolder.shipped()).stream()
                .map(Mutant::key)
                .collect(Collectors.toCollection(TreeSet::new));
        Set<String> gone = listed();
        gone.removeAll(known);
        assertEquals(Set.of(), gone, "no rule holds these comparisons any more; delete their lines from " + LISTED);
    }

    @Test
    void everyFlippedComparisonBreaksAScenarioOrIsListed() throws IOException {
        List<Mutant> all = new ArrayList<>(Mutant.all(RuleFolder.shipped()));
        int total = all.size();
        boolean whole = SAMPLE >= total;
        if (!whole) {
            all = sample(all);
        }
        reach();
        Set<String> survivors = new ConcurrentSkipListSet<>();
        int compiled = 0;
        for (int from = 0; from < all.size(); from += BATCH) {
            compiled += batch(all.subList(from, Math.min(all.size(), from + BATCH)), survivors);
            Files.createDirectories(FOUND.getParent());
            Files.write(FOUND, survivors);
        }
        System.out.println(
                "comparisons flipped " + all.size() + " of " + total + ", seed " + SEED + ": refused by the compiler "
                        + (all.size() - compiled) + ", killed " + (compiled - survivors.size()) + ", survived "
                        + survivors.size() + "; listed " + listed().size());
        Set<String> news = new TreeSet<>(survivors);
        news.removeAll(listed());
        assertEquals(Set.of(), news, "flipping these breaks no scenario; add one that tells, or list the reason");
        if (whole) {
            Set<String> dead = listed();
            dead.removeAll(survivors);
            assertEquals(Set.of(), dead, "these no longer survive; delete their lines from " + LISTED);
        }
    }

    /** A sample that a new rule hardly changes: the mutants whose names come first when scattered by the seed. */
    private static List<Mutant> sample(List<Mutant> all) {
        return all.stream()
                .sorted(Comparator.comparing(
                                (Mutant m) -> new Random(SEED ^ m.key().hashCode()).nextLong())
                        .thenComparing(Mutant::key))
                .limit(SAMPLE)
                .toList();
    }

    private int batch(List<Mutant> mutants, Set<String> survivors) {
        Map<String, String> texts = new LinkedHashMap<>();
        for (int i = 0; i < mutants.size(); i++) {
            String name = mutants.get(i).drlPackage(i);
            texts.put(name, mutants.get(i).text(name));
        }
        Map<String, Rule> rules = MutatedRules.compile(texts);
        for (int i = 0; i < mutants.size(); i++) {
            Rule rule = rules.get(mutants.get(i).drlPackage(i));
            if (rule != null && !killed(mutants.get(i), rule)) {
                survivors.add(mutants.get(i).key());
            }
        }
        return rules.size();
    }

    private boolean killed(Mutant mutant, Rule rule) {
        Map<String, RuleBase> changed = new HashMap<>();
        ScenarioRunner runner = new ScenarioRunner(code -> changed.computeIfAbsent(
                code, c -> MutatedRules.replace(base(c), mutant.rule().phase(), rule)));
        return reached.getOrDefault(mutant.rule().id(), List.of()).stream()
                .sorted(Comparator.comparing(f ->
                        !f.getFileName().toString().startsWith(mutant.rule().id())))
                .limit(MOST)
                .anyMatch(file -> breaks(runner, file));
    }

    /** A rule that cannot be carried out any more counts as found. */
    private static boolean breaks(ScenarioRunner runner, Path file) {
        try {
            return !runner.run(file).problems().isEmpty();
        } catch (RuntimeException e) {
            return true;
        }
    }

    /** The scenarios in which each rule fires, or is expected to be silent. */
    private void reach() {
        for (ScenarioRun run : new ScenarioRunner(this::base).runAll(Path.of("scenarios"))) {
            Set<String> rules = new TreeSet<>(run.fired());
            rules.addAll(run.silent());
            rules.forEach(
                    r -> reached.computeIfAbsent(r, k -> new ArrayList<>()).add(run.file()));
        }
    }

    private static Set<String> listed() throws IOException {
        return Files.readAllLines(LISTED).stream()
                .filter(l -> !l.isBlank() && !l.startsWith("#"))
                .map(l -> l.split(": ", 2)[0])
                .collect(Collectors.toCollection(TreeSet::new));
    }
}
