package org.fumewarden.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.fumewarden.codes.Problem;
import org.fumewarden.codes.RuleFolder;
import org.fumewarden.engine.WrittenRule;
import org.junit.jupiter.api.Test;

/** Each rule that closes a class has its mistake in the training room. A promise of this program, no source. */
final class MistakesNamedTest extends CopiedRules {
    @Test
    void aRuleWithoutItsMistakeIsToldAndAMistakeWithoutItsRule() {
        List<WrittenRule> shipped = RuleBaseCheck.rules(RuleFolder.shipped());
        assertEquals(List.of(), MistakesNamed.check(shipped, shipped));
        EditedRules.edit(rules, "gb/exclusion.drl", "\"GB-EXCLUSION-010 ", "\"GB-EXCLUSION-995 ");
        List<WrittenRule> own = RuleBaseCheck.rules(RuleFolder.at(rules));
        List<String> told =
                MistakesNamed.check(own, own).stream().map(Problem::text).toList();
        assertTrue(told.stream().anyMatch(p -> p.contains("GB-EXCLUSION-995 closes a class")), told.toString());
        assertTrue(told.stream().anyMatch(p -> p.contains("GB-EXCLUSION-010 is not a rule")), told.toString());
    }
}
