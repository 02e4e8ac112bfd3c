package org.fumewarden.engine;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.kie.api.KieBase;

/**
 * The compiled rules of one phase.
 *
 * @param spoken every rule by its whole name
 * @param places the place of each rule in the order of ids, by id
 * @param read which rules can match a fact
 */
record PhaseRules(
        Phase phase, KieBase base, Map<String, SpokenRule> spoken, Map<String, Integer> places, Readers read) {
    static PhaseRules of(Phase phase, KieBase base) {
        Map<String, RuleCard> cards = CardReader.cards(phase, base);
        Map<String, SpokenRule> spoken = new HashMap<>();
        cards.forEach((name, card) -> spoken.put(name, SpokenRule.of(card)));
        List<String> ids = cards.values().stream().map(RuleCard::id).sorted().toList();
        Map<String, Integer> places = new HashMap<>();
        Map<String, Integer> byName = new HashMap<>();
        ids.forEach(id -> places.put(id, places.size()));
        cards.forEach((name, card) -> byName.put(name, places.get(card.id())));
        return new PhaseRules(phase, base, spoken, places, new Readers(base, byName));
    }

    /** The place of a rule. */
    int place(RuleCard card) {
        return places.get(card.id());
    }
}
