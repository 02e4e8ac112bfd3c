package org.fumewarden.engine;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import org.drools.core.impl.InternalRuleBase;
import org.drools.core.reteoo.AlphaNode;
import org.drools.core.reteoo.BetaNode;
import org.drools.core.reteoo.ExistsNode;
import org.drools.core.reteoo.JoinNode;
import org.drools.core.reteoo.LeftInputAdapterNode;
import org.drools.core.reteoo.LeftTupleSource;
import org.drools.core.reteoo.ObjectSource;
import org.drools.core.reteoo.ObjectTypeNode;
import org.drools.core.reteoo.RuleTerminalNode;
import org.drools.core.reteoo.TerminalNode;
import org.fumewarden.model.Fact;

/**
 * The patterns for which each rule of a phase must find a fact before it can fire. What it asks not to be there, and what it counts
 * up, it needs not to find. A rule with several ways to fire has several sets of patterns.
 */
final class Wants {
    /** By the node behind which a pattern stands, since rules share what they ask alike. */
    private final Map<ObjectSource, Integer> patterns = new IdentityHashMap<>();

    private final Map<Integer, List<BitSet>> ways = new HashMap<>();

    Wants(InternalRuleBase base, Map<String, Integer> places) {
        for (TerminalNode[] ends : base.getReteooBuilder().getTerminalNodes().values()) {
            for (TerminalNode end : ends) {
                int place = places.get(((RuleTerminalNode) end).getRule().getName());
                ways.computeIfAbsent(place, p -> new ArrayList<>()).add(way(end));
            }
        }
    }

    private BitSet way(TerminalNode end) {
        BitSet way = new BitSet();
        LeftTupleSource node = end.getLeftTupleSource();
        while (!(node instanceof LeftInputAdapterNode)) {
            if (node instanceof JoinNode || node instanceof ExistsNode) {
                want(((BetaNode) node).getRightInput().getParent(), way);
            }
            node = node.getLeftTupleSource();
        }
        want(((LeftInputAdapterNode) node).getParent(), way);
        return way;
    }

    /** Several patterns together, or one of something other than our facts, may be found at any time. */
    private void want(ObjectSource source, BitSet way) {
        ObjectSource type = source;
        while (type instanceof AlphaNode) {
            type = (ObjectSource) type.getParent();
        }
        if (type instanceof ObjectTypeNode of && of.getObjectType().isAssignableTo(Fact.class)) {
            way.set(patterns.computeIfAbsent(source, s -> patterns.size()));
        }
    }

    /** The number of the pattern that ends with a node; -1 where no rule must find it. */
    int pattern(ObjectSource node) {
        return patterns.getOrDefault(node, -1);
    }

    /** True when a rule finds what it must, where these patterns find something. */
    boolean found(int rule, BitSet finding) {
        for (BitSet way : ways.get(rule)) {
            if (within(way, finding)) {
                return true;
            }
        }
        return false;
    }

    private static boolean within(BitSet way, BitSet finding) {
        for (int pattern = way.nextSetBit(0); pattern >= 0; pattern = way.nextSetBit(pattern + 1)) {
            if (!finding.get(pattern)) {
                return false;
            }
        }
        return true;
    }
}
