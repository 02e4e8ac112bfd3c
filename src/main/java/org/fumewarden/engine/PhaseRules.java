package org.fumewarden.engine;

import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.drools.model.Model;
import org.drools.model.impl.ModelImpl;
import org.drools.modelcompiler.KieBaseBuilder;
import org.fumewarden.model.Kept;
import org.kie.api.KieBase;

/**
 * The compiled rules of one phase.
 *
 * @param models the generated classes of their files
 * @param parts only some of the rules, by their places
 * @param spoken every rule by its whole name
 * @param places the place of each rule in the order of ids, by id
 * @param read which rules can match a fact
 */
record PhaseRules(
        Phase phase,
        List<Model> models,
        KieBase base,
        Kept<BitSet, KieBase> parts,
        Map<String, SpokenRule> spoken,
        Map<String, Integer> places,
        Readers read) {
    /** Sets of rules that are kept by themselves. */
    private static final int SETS = 8;

    static PhaseRules of(Phase phase, List<Model> models) {
        KieBase base = built(models);
        Map<String, RuleCard> cards = CardReader.cards(phase, base);
        Map<String, SpokenRule> spoken = new HashMap<>();
        cards.forEach((name, card) -> spoken.put(name, SpokenRule.of(card)));
        List<String> ids = cards.values().stream().map(RuleCard::id).sorted().toList();
        Map<String, Integer> places = new HashMap<>();
        Map<String, Integer> byName = new HashMap<>();
        ids.forEach(id -> places.put(id, places.size()));
        cards.forEach((name, card) -> byName.put(name, places.get(card.id())));
        return new PhaseRules(phase, models, base, new Kept<>(SETS), spoken, places, new Readers(base, byName));
    }

    private static KieBase built(List<Model> models) {
        return KieBaseBuilder.createKieBaseFromModel(models, ShippedRules.CONFIGURATION);
    }

    /** Some of the rules by themselves: what the others would join is not joined at all. */
    KieBase base(BitSet some) {
        return some.cardinality() == spoken.size()
                ? base
                : parts.of(
                        some,
                        set -> built(models.stream().map(m -> only(m, set)).toList()));
    }

    private Model only(Model all, BitSet some) {
        ModelImpl part = new ModelImpl(all.getName())
                .withRules(all.getRules().stream()
                        .filter(r -> some.get(place(spoken.get(r.getName()).card())))
                        .toList())
                .withGlobals(all.getGlobals());
        all.getTypeMetaDatas().forEach(part::addTypeMetaData);
        return part;
    }

    /** The place of a rule. */
    int place(RuleCard card) {
        return places.get(card.id());
    }
}
