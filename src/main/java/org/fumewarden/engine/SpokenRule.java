package org.fumewarden.engine;

/** A rule with its sentence taken apart once, for it is filled at every firing. */
record SpokenRule(RuleCard card, Template sentence) {
    static SpokenRule of(RuleCard card) {
        return new SpokenRule(card, Template.of(card.says()));
    }
}
