package org.fumewarden.engine;

import java.util.List;
import org.kie.api.definition.rule.Rule;

/** A rule with its sentence and its absences taken apart once, for they are filled at every firing. */
final class SpokenRule {
    private final RuleCard card;
    private final Template sentence;
    private volatile List<Absence> absences;

    private SpokenRule(RuleCard card, Template sentence) {
        this.card = card;
        this.sentence = sentence;
    }

    static SpokenRule of(RuleCard card) {
        return new SpokenRule(card, Template.of(card.says()));
    }

    RuleCard card() {
        return card;
    }

    Template sentence() {
        return sentence;
    }

    /** What the rule asks not to be there; looked up when it first fires, since most never do in one task. */
    List<Absence> absences(Rule rule) {
        List<Absence> known = absences;
        if (known == null) {
            known = Absence.of(rule);
            absences = known;
        }
        return known;
    }
}
