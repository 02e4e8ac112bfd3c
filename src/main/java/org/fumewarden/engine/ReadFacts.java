package org.fumewarden.engine;

import java.util.List;
import org.drools.core.common.DefaultFactHandle;
import org.drools.core.common.InternalFactHandle;
import org.drools.core.impl.InternalRuleBase;
import org.drools.core.reteoo.AlphaNode;
import org.drools.core.reteoo.ObjectSink;
import org.drools.core.reteoo.ObjectSource;
import org.drools.core.reteoo.ObjectTypeNode;
import org.fumewarden.model.Answer;
import org.fumewarden.model.Fact;
import org.fumewarden.model.Unknown;
import org.kie.api.KieBase;

/**
 * Tells which facts some pattern of compiled rules can match, by their type and by what the pattern asks of one fact
 * alone. All others cannot change what the rules conclude.
 */
final class ReadFacts {
    private static final int ANSWERS_KEPT = 2_000;

    private final List<ObjectTypeNode> types;

    /** Answers are few and asked about by many patterns. */
    private final Kept<Fact, Boolean> answers = new Kept<>(ANSWERS_KEPT);

    ReadFacts(KieBase base) {
        this.types = ((InternalRuleBase) base).getRete().getObjectTypeNodes();
    }

    /** True when some pattern matches the fact. */
    boolean contain(Fact fact) {
        return fact instanceof Answer || fact instanceof Unknown ? answers.of(fact, this::matched) : matched(fact);
    }

    private boolean matched(Fact fact) {
        InternalFactHandle handle = null;
        for (ObjectTypeNode type : types) {
            if (type.getObjectType().isAssignableFrom(fact.getClass())) {
                handle = handle == null ? new DefaultFactHandle(1, fact) : handle;
                if (reaches(type, handle)) {
                    return true;
                }
            }
        }
        return false;
    }

    private static boolean reaches(ObjectSource node, InternalFactHandle fact) {
        for (ObjectSink sink : node.getObjectSinkPropagator().getSinks()) {
            if (!(sink instanceof AlphaNode test)) {
                return true;
            }
            // No rule of ours uses globals, so there is nothing to look up beyond the fact.
            if (test.getConstraint().isAllowed(fact, null) && reaches(test, fact)) {
                return true;
            }
        }
        return false;
    }
}
