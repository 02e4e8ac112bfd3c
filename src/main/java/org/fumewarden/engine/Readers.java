package org.fumewarden.engine;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.drools.base.common.NetworkNode;
import org.drools.core.common.DefaultFactHandle;
import org.drools.core.common.InternalFactHandle;
import org.drools.core.impl.InternalRuleBase;
import org.drools.core.reteoo.AlphaNode;
import org.drools.core.reteoo.ObjectSink;
import org.drools.core.reteoo.ObjectSource;
import org.drools.core.reteoo.ObjectTypeNode;
import org.fumewarden.model.Fact;
import org.kie.api.KieBase;
import org.kie.api.definition.rule.Rule;

/**
 * Tells which rules of a phase have a pattern that a fact can match, by its type and by what the pattern asks of one
 * fact alone. To all others the fact makes no difference.
 */
final class Readers {
    private static final Reading NONE = new Reading(new BitSet(), new BitSet());

    private final List<ObjectTypeNode> nodes;
    private final Map<String, Integer> places;
    private final Map<Class<?>, List<ObjectTypeNode>> byType = new ConcurrentHashMap<>();
    private final Map<Class<?>, List<Branch>> branches = new ConcurrentHashMap<>();
    private final InternalRuleBase base;
    private volatile Wants wants;

    /**
     * What a fact is to a phase.
     *
     * @param rules the rules that read it, by their places
     * @param found the patterns of {@link Wants} that it matches
     */
    record Reading(BitSet rules, BitSet found) {}

    /** The rules right behind a node, the pattern that ends with it, and the tests of a fact alone that lead on from it. */
    private record Branch(BitSet rules, int pattern, List<Test> tests) {}

    private record Test(AlphaNode asks, Branch behind) {}

    /**
     * Readers of a phase.
     *
     * @param places the place of each rule, by its whole name, in the sets that this gives
     */
    Readers(KieBase base, Map<String, Integer> places) {
        this.base = (InternalRuleBase) base;
        this.nodes = this.base.getRete().getObjectTypeNodes();
        this.places = Map.copyOf(places);
    }

    /** True when some rule reads the fact. */
    boolean some(Fact fact) {
        if (types(fact).isEmpty()) {
            return false;
        }
        InternalFactHandle handle = new DefaultFactHandle(1, fact);
        for (ObjectTypeNode type : types(fact)) {
            if (reaches(type, handle)) {
                return true;
            }
        }
        return false;
    }

    /** What the rules must find; worked out when first asked, since a program that decides once does not ask. */
    Wants wants() {
        if (wants == null) {
            synchronized (this) {
                wants = wants == null ? new Wants(base, places) : wants;
            }
        }
        return wants;
    }

    /** The rules that read the fact and the patterns that it matches; not to be changed. */
    Reading of(Fact fact) {
        List<Branch> known = branches.get(fact.getClass());
        if (known == null) {
            known = types(fact).stream().map(this::branch).toList();
            branches.put(fact.getClass(), known);
        }
        if (known.isEmpty()) {
            return NONE;
        }
        Reading reading = new Reading(new BitSet(), new BitSet());
        InternalFactHandle handle = new DefaultFactHandle(1, fact);
        known.forEach(branch -> collect(branch, handle, reading));
        return reading;
    }

    private Branch branch(ObjectSource node) {
        BitSet rules = new BitSet();
        List<Test> tests = new ArrayList<>();
        for (ObjectSink sink : node.getObjectSinkPropagator().getSinks()) {
            if (sink instanceof AlphaNode test) {
                tests.add(new Test(test, branch(test)));
            } else {
                rules.or(rules(sink));
            }
        }
        return new Branch(rules, wants().pattern(node), List.copyOf(tests));
    }

    private List<ObjectTypeNode> types(Fact fact) {
        List<ObjectTypeNode> known = byType.get(fact.getClass());
        return known != null ? known : byType.computeIfAbsent(fact.getClass(), this::matching);
    }

    private List<ObjectTypeNode> matching(Class<?> type) {
        List<ObjectTypeNode> matching = new ArrayList<>();
        for (ObjectTypeNode node : nodes) {
            if (node.getObjectType().isAssignableFrom(type)) {
                matching.add(node);
            }
        }
        return List.copyOf(matching);
    }

    private static boolean reaches(ObjectSource node, InternalFactHandle fact) {
        for (ObjectSink sink : node.getObjectSinkPropagator().getSinks()) {
            if (!(sink instanceof AlphaNode test) || allows(test, fact) && reaches(test, fact)) {
                return true;
            }
        }
        return false;
    }

    private static void collect(Branch branch, InternalFactHandle fact, Reading into) {
        into.rules().or(branch.rules());
        if (branch.pattern() >= 0) {
            into.found().set(branch.pattern());
        }
        for (Test test : branch.tests()) {
            if (allows(test.asks(), fact)) {
                collect(test.behind(), fact, into);
            }
        }
    }

    /** No rule of ours uses globals, so there is nothing to look up beyond the fact. */
    private static boolean allows(AlphaNode test, InternalFactHandle fact) {
        return test.getConstraint().isAllowed(fact, null);
    }

    private BitSet rules(NetworkNode node) {
        BitSet rules = new BitSet();
        for (Rule rule : node.getAssociatedRules()) {
            rules.set(places.get(rule.getName()));
        }
        return rules;
    }
}
