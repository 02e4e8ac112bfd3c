package org.fumewarden.trail;

import java.util.List;
import java.util.Optional;
import org.apache.commons.lang3.StringUtils;
import org.fumewarden.model.Citation;
import org.fumewarden.model.Conclusion;
import org.fumewarden.model.Confidence;

/**
 * One application of one rule.
 *
 * @param id number of the step, for example {@code s12}
 * @param overriddenBy id of the rule that lifted the conclusion
 */
public record Step(String id, Finding finding, List<Premise> premises, Optional<String> overriddenBy) {
    public Step {
        premises = List.copyOf(premises);
    }

    /** Key of the phase. */
    public String phase() {
        return finding.phase();
    }

    /** Id of the rule. */
    public String rule() {
        return finding.rule();
    }

    /** The conclusion as a sentence. */
    public String says() {
        return finding.says();
    }

    /** The clause behind the rule. */
    public Citation citation() {
        return finding.citation();
    }

    /** What was concluded. */
    public Conclusion conclusion() {
        return finding.conclusion();
    }

    /** The weakest confidence among the rule and the table rows it read. */
    public Confidence confidence() {
        return finding.confidence();
    }

    /** True when the conclusion still stands. */
    public boolean stands() {
        return overriddenBy.isEmpty();
    }

    /** What a subject such as "minor-ozone" is about: what follows its first hyphen, or nothing. */
    public static String about(String subject) {
        return StringUtils.substringAfter(subject, "-");
    }
}
