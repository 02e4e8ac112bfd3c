package org.fumewarden.engine;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Collections;
import java.util.List;
import org.fumewarden.model.Kept;

/**
 * The rules of a phase in groups that conclude without each other, and what each group concluded from the facts that it met
 * lately. At first each rule is a group; one that reads what another of the same phase concludes is joined with it.
 */
final class RuleGroups {
    private static final int KEPT = 128;

    private final List<Group> groups;
    private final int[] groupOf;

    /** Rules by their places, and their drafts by the facts that they rest on. */
    record Group(BitSet rules, Kept<List<Held>, List<StepDraft>> drafts) {
        Group(BitSet rules) {
            this(rules, new Kept<>(KEPT));
        }
    }

    private RuleGroups(List<Group> groups, int rules) {
        this.groups = groups;
        this.groupOf = new int[rules];
        for (int g = 0; g < groups.size(); g++) {
            int group = g;
            groups.get(g).rules().stream().forEach(rule -> groupOf[rule] = group);
        }
    }

    /** Each rule by itself. */
    static RuleGroups single(int rules) {
        List<Group> groups = new ArrayList<>();
        for (int rule = 0; rule < rules; rule++) {
            BitSet alone = new BitSet();
            alone.set(rule);
            groups.add(new Group(alone));
        }
        return new RuleGroups(groups, rules);
    }

    List<Group> all() {
        return groups;
    }

    /** The groups of which some rule finds what it must; the others conclude nothing. */
    BitSet able(Wants wants, BitSet found) {
        BitSet able = new BitSet();
        for (int rule = 0; rule < groupOf.length; rule++) {
            if (!able.get(groupOf[rule]) && wants.found(rule, found)) {
                able.set(groupOf[rule]);
            }
        }
        return able;
    }

    /** The facts that each of some groups reads, in their order. */
    List<List<Held>> facts(BitSet some, List<Held> facts, PhaseRules phase) {
        List<List<Held>> read = new ArrayList<>(Collections.nCopies(groups.size(), List.of()));
        for (Held fact : facts) {
            BitSet rules = fact.reading(phase).rules();
            for (int rule = rules.nextSetBit(0); rule >= 0; rule = rules.nextSetBit(rule + 1)) {
                if (!some.get(groupOf[rule])) {
                    continue;
                }
                List<Held> group = read.get(groupOf[rule]);
                if (group.isEmpty()) {
                    List<Held> begun = new ArrayList<>();
                    begun.add(fact);
                    read.set(groupOf[rule], begun);
                } else if (group.get(group.size() - 1) != fact) {
                    // Rules of one group often read the same fact; it counts once.
                    group.add(fact);
                }
            }
        }
        return read;
    }

    int groupOf(int rule) {
        return groupOf[rule];
    }

    /** These groups with all groups of some rules made one; this, when they are one already. */
    RuleGroups joined(BitSet rules) {
        BitSet together = new BitSet();
        List<Group> left = new ArrayList<>();
        int joined = 0;
        for (Group group : groups) {
            if (group.rules().intersects(rules)) {
                together.or(group.rules());
                joined++;
            } else {
                left.add(new Group(group.rules()));
            }
        }
        left.add(new Group(together));
        return joined < 2 ? this : new RuleGroups(left, groupOf.length);
    }
}
