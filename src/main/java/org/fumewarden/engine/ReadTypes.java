package org.fumewarden.engine;

import java.util.List;
import org.drools.base.base.ObjectType;
import org.drools.core.impl.InternalRuleBase;
import org.drools.core.reteoo.ObjectTypeNode;
import org.fumewarden.model.Fact;
import org.kie.api.KieBase;

/** The types of fact that compiled rules match on. Facts of other types cannot change what the rules conclude. */
record ReadTypes(List<ObjectType> types) {
    static ReadTypes of(KieBase base) {
        return new ReadTypes(((InternalRuleBase) base)
                .getRete().getObjectTypeNodes().stream()
                        .map(ObjectTypeNode::getObjectType)
                        .toList());
    }

    /** True when some rule matches on facts of this kind. */
    boolean contain(Fact fact) {
        return types.stream().anyMatch(type -> type.isAssignableFrom(fact.getClass()));
    }
}
