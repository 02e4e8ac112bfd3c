package org.fumewarden.engine;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;
import org.fumewarden.model.Fact;
import org.fumewarden.model.Kept;
import org.fumewarden.model.Row;

/**
 * Runs the rules of one phase on one day. What a rule concludes depends on nothing but the facts that it can match, so
 * what each concluded from the facts met lately is kept, and of the others only those run that find a fact for each pattern that they
 * need. Safe to share between threads.
 */
final class PhaseRunner {
    /** At most so many sets of rules have sessions of their own; they stay, since making them takes longer than they save once. */
    private static final int SETS = 8;

    private static final int SETS_ASKED = 100;
    private static final int AGAIN = 3;

    private final PhaseRules rules;
    private final RowsInForce rows;
    private final LocalDate day;
    private final PhaseSessions whole;
    private final Map<BitSet, PhaseSessions> parts = new ConcurrentHashMap<>();
    private final Kept<BitSet, Integer> asked = new Kept<>(SETS_ASKED);
    private volatile RuleGroups groups;
    private volatile BitSet foundInRows;

    PhaseRunner(PhaseRules rules, RowsInForce rows, LocalDate day, Set<String> switchedOff) {
        this.rules = rules;
        this.rows = rows;
        this.day = day;
        BitSet all = new BitSet();
        all.set(0, rules.spoken().size());
        this.whole = new PhaseSessions(rules, rows, day, switchedOff, all);
        this.groups = RuleGroups.single(rules.spoken().size());
    }

    /** What the rules conclude from the rows in force and these facts, with nothing kept for later. */
    List<StepDraft> runOnce(List<Held> facts, DraftWriter writer) {
        return writer.drafts(whole.runOnce(readBySome(facts)));
    }

    /** What the rules would conclude if a row held something else, or were not there; nothing of it is kept. */
    List<StepDraft> runWith(List<Held> facts, Row row, Optional<Row> instead, DraftWriter writer) {
        return writer.drafts(whole.run(readBySome(facts), row, instead));
    }

    /** What the rules conclude from the rows in force and these facts. */
    List<StepDraft> run(List<Held> facts, DraftWriter writer) {
        RuleGroups now = groups;
        BitSet able = now.able(rules.read().wants(), found(facts));
        List<List<Held>> read = now.facts(able, facts, rules);
        List<List<StepDraft>> found = new ArrayList<>(read.size());
        BitSet missed = new BitSet();
        Set<Held> met = new LinkedHashSet<>();
        for (int g = 0; g < read.size(); g++) {
            RuleGroups.Group group = now.all().get(g);
            found.add(able.get(g) ? group.drafts().get(read.get(g)) : List.of());
            if (found.get(g) == null) {
                missed.or(group.rules());
                met.addAll(read.get(g));
            }
        }
        if (!missed.isEmpty()) {
            List<Firing> firings = firings(missed, met, facts);
            RuleGroups joined = joined(now, firings);
            if (joined != now) {
                groups = joined;
                return run(facts, writer);
            }
            keep(now, read, found, writer.drafts(firings));
        }
        List<StepDraft> drafts = new ArrayList<>();
        found.forEach(drafts::addAll);
        return drafts;
    }

    /** Keeps what the groups that had nothing kept came to, and puts it where they stand. */
    private void keep(RuleGroups now, List<List<Held>> read, List<List<StepDraft>> found, List<StepDraft> drafts) {
        Map<Integer, List<StepDraft>> byGroup = drafts.stream()
                .sorted(StepWriter::byDraft)
                .collect(Collectors.groupingBy(d -> now.groupOf(rules.place(d.card()))));
        for (int g = 0; g < read.size(); g++) {
            if (found.get(g) == null) {
                List<StepDraft> own = List.copyOf(byGroup.getOrDefault(g, List.of()));
                now.all().get(g).drafts().put(read.get(g), own);
                found.set(g, own);
            }
        }
    }

    /** Joins the groups of rules that read each other's conclusions: what such a rule concludes depends on both. */
    private RuleGroups joined(RuleGroups now, List<Firing> firings) {
        RuleGroups joined = now;
        for (Firing firing : firings) {
            BitSet readers = rules.read().of(firing.conclusion()).rules();
            if (!readers.isEmpty()) {
                BitSet together = (BitSet) readers.clone();
                together.set(rules.place(firing.rule().card()));
                joined = joined.joined(together);
            }
        }
        return joined;
    }

    /** The patterns that rows or these facts match. */
    private BitSet found(List<Held> facts) {
        if (foundInRows == null) {
            foundInRows = rows.found(rules);
        }
        BitSet found = (BitSet) foundInRows.clone();
        for (Held fact : facts) {
            found.or(fact.reading(rules).found());
        }
        return found;
    }

    private List<Fact> readBySome(List<Held> facts) {
        return facts.stream().map(Held::fact).filter(rules.read()::some).toList();
    }

    /**
     * What some rules conclude.
     *
     * @param met what they read of the facts
     */
    private List<Firing> firings(BitSet some, Set<Held> met, List<Held> facts) {
        // Rules by themselves and their sessions take a while to make: they pay for a set that comes again and again.
        int times = asked.of(some, set -> 0);
        asked.put(some, times + 1);
        if (times >= AGAIN
                && parts.size() < SETS
                && some.cardinality() < rules.spoken().size()) {
            parts.computeIfAbsent(some, set -> new PhaseSessions(rules, rows, day, Set.of(), set));
        }
        PhaseSessions own = parts.get(some);
        if (own != null) {
            return own.run(met.stream().map(Held::fact).toList());
        }
        return around(some).run(readBySome(facts)).stream()
                .filter(f -> some.get(rules.place(f.rule().card())))
                .toList();
    }

    /** The sessions of the fewest rules that hold these; what the others conclude besides is not theirs. */
    private PhaseSessions around(BitSet some) {
        return parts.entrySet().stream()
                .filter(part -> some.stream().allMatch(part.getKey()::get))
                .min(Comparator.comparing(part -> part.getKey().cardinality()))
                .map(Map.Entry::getValue)
                .orElse(whole);
    }
}
