package org.fumewarden.engine;

import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.apache.commons.lang3.StringUtils;
import org.fumewarden.model.Citation;
import org.fumewarden.model.Confidence;
import org.fumewarden.model.Keyed;
import org.kie.api.KieBase;
import org.kie.api.definition.rule.Rule;

/** Reads the metadata of compiled rules. */
final class CardReader {
    private static final String ALWAYS = "1900-01-01";
    private static final String NEVER = "9999-12-31";

    private CardReader() {}

    /** The card of each rule by its whole name. */
    static Map<String, RuleCard> cards(Phase phase, KieBase base) {
        return base.getKiePackages().stream()
                .flatMap(p -> p.getRules().stream())
                .collect(Collectors.toMap(Rule::getName, rule -> card(phase, rule)));
    }

    private static RuleCard card(Phase phase, Rule rule) {
        Map<String, Object> meta = rule.getMetaData();
        String id = id(rule.getName());
        return new RuleCard(
                id,
                StringUtils.substringAfter(rule.getName(), " "),
                codeOf(rule.getPackageName()),
                phase,
                new Citation(
                        value(meta, "source", "none"),
                        value(meta, "clause", "none"),
                        value(meta, "edition", ""),
                        confidence(value(meta, "confidence", "memory"))),
                value(meta, "says", StringUtils.substringAfter(rule.getName(), " ")),
                LocalDate.parse(value(meta, "from", ALWAYS)),
                LocalDate.parse(value(meta, "until", NEVER)),
                Optional.of(value(meta, "overrides", "")).filter(StringUtils::isNotEmpty));
    }

    private static String id(String ruleName) {
        return StringUtils.substringBefore(ruleName, " ");
    }

    private static String codeOf(String packageName) {
        return packageName.split("\\.")[1].replace('_', '-');
    }

    private static Confidence confidence(String key) {
        return Keyed.find(Confidence.class, key).orElse(Confidence.MEMORY);
    }

    private static String value(Map<String, Object> meta, String name, String otherwise) {
        Object value = meta.get(name);
        return value == null ? otherwise : StringUtils.unwrap(value.toString(), '"');
    }
}
