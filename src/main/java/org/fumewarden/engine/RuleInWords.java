package org.fumewarden.engine;

import java.util.ArrayList;
import java.util.List;
import org.drools.base.definitions.rule.impl.RuleImpl;
import org.drools.base.rule.GroupElement;
import org.drools.base.rule.Pattern;
import org.drools.base.rule.RuleConditionElement;
import org.kie.api.definition.rule.Rule;

/**
 * What a rule asks, in words that a reader of no code understands. It is read from the compiled rule, so that it says what is
 * done and not what somebody meant.
 *
 * @param when what has to be there
 * @param unless what must not be there
 */
public record RuleInWords(List<String> when, List<String> unless) {
    static RuleInWords of(Rule rule, AbsenceWords words) {
        List<String> when = new ArrayList<>();
        gather(((RuleImpl) rule).getLhs(), words, when);
        List<String> unless = Absence.of(rule).stream().map(words::together).toList();
        return new RuleInWords(List.copyOf(when), unless);
    }

    private static void gather(RuleConditionElement element, AbsenceWords words, List<String> when) {
        if (element instanceof GroupElement group) {
            if (!group.isNot()) {
                group.getChildren().forEach(child -> gather(child, words, when));
            }
        } else if (element instanceof Pattern pattern) {
            if (pattern.getSource() == null) {
                when.add(words.present(Absence.missing(pattern)));
            } else {
                List<String> counted = new ArrayList<>();
                pattern.getSource().getNestedElements().forEach(child -> gather(child, words, counted));
                when.add("taken together: " + String.join(", and ", counted));
            }
        }
    }
}
