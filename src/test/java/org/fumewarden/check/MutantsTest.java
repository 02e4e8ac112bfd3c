package org.fumewarden.check;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.fumewarden.Extent;
import org.fumewarden.codes.RuleFolder;
import org.junit.jupiter.api.Test;

/**
 * Each comparison of each rule, flipped, and each condition, deleted, breaks a scenario or is listed with a reason. The gate
 * tries a sample; {@code mvn verify -Psoundness} tries all, and {@code -Dfumewarden.mutant=US-.*} those whose name matches.
 */
final class MutantsTest {
    private static final Path LISTED = Path.of("docs/mutants.txt");
    private static final int SAMPLE = Extent.of(2, 24, Extent.ALL);
    private static final String CHOSEN = System.getProperty("fumewarden.mutant", ".*");

    @Test
    void theListNamesMutantsThatStillExist() throws IOException {
        Set<String> known = Mutant.all(RuleFolder.shipped()).stream()
                .map(Mutant::key)
                .collect(Collectors.toCollection(TreeSet::new));
        Set<String> gone = listed();
        gone.removeAll(known);
        assertEquals(Set.of(), gone, "no rule holds these any more; delete their lines from " + LISTED);
    }

    @Test
    void everyMutantBreaksAScenarioOrIsListed() throws IOException {
        List<Mutant> all = Mutant.all(RuleFolder.shipped()).stream()
                .filter(m -> m.key().matches(CHOSEN))
                .toList();
        int total = all.size();
        boolean whole = SAMPLE >= total;
        List<Mutant> tried = Extent.sample(all, Mutant::key, SAMPLE);
        MutantRun run = MutantRun.of(tried, whole ? Set.of() : listed());
        System.out.println("mutants " + tried.size() + " of " + total + ", seed " + Extent.SEED + ": " + run.counts()
                + "; listed " + listed().size());
        Set<String> news = new TreeSet<>(run.survivors());
        news.removeAll(listed());
        assertEquals(Set.of(), news, "these break no scenario; add one that tells, or list the reason");
        if (whole) {
            Set<String> dead = listed();
            dead.retainAll(run.killed());
            assertEquals(Set.of(), dead, "these no longer survive; delete their lines from " + LISTED);
        }
    }

    private static Set<String> listed() throws IOException {
        return Files.readAllLines(LISTED).stream()
                .filter(l -> !l.isBlank() && !l.startsWith("#"))
                .map(l -> l.split(": ", 2)[0])
                .collect(Collectors.toCollection(TreeSet::new));
    }
}
