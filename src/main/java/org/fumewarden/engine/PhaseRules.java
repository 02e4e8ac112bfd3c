package org.fumewarden.engine;

import java.util.HashMap;
import java.util.Map;
import org.kie.api.KieBase;

/**
 * The compiled rules of one phase.
 *
 * @param spoken every rule by its whole name
 * @param read which facts they can match
 */
record PhaseRules(Phase phase, KieBase base, Map<String, SpokenRule> spoken, ReadFacts read) {
    static PhaseRules of(Phase phase, KieBase base) {
        Map<String, SpokenRule> spoken = new HashMap<>();
        CardReader.cards(phase, base).forEach((name, card) -> spoken.put(name, SpokenRule.of(card)));
        return new PhaseRules(phase, base, spoken, new ReadFacts(base));
    }

    /** The card of the rule with a whole name. */
    RuleCard card(String name) {
        return spoken.get(name).card();
    }
}
