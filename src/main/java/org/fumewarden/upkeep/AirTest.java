package org.fumewarden.upkeep;

import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A test of breathing air or of the air of the work place.
 *
 * @param topic breathing, workplace-lead, workplace-silica, ...
 */
public record AirTest(
        Result result,
        String topic,
        String place,
        String standard,
        Optional<BigDecimal> oxygen,
        Optional<BigDecimal> carbonMonoxide,
        Optional<BigDecimal> carbonDioxide,
        Optional<BigDecimal> oil,
        String water,
        String odour,
        String others,
        String methods,
        String laboratory)
        implements Details {
    public AirTest {
        if (result != Result.OPEN) {
            Result.ofCheck("result", result);
        }
        topic = Given.needed("topic", topic);
        place = Given.optional("place", place);
        standard = Given.optional("standard", standard);
        oxygen = Given.amount("oxygen", oxygen);
        carbonMonoxide = Given.amount("carbon-monoxide", carbonMonoxide);
        carbonDioxide = Given.amount("carbon-dioxide", carbonDioxide);
        oil = Given.amount("oil", oil);
        water = Given.optional("water", water);
        odour = Given.optional("odour", odour);
        others = Given.optional("others", others);
        methods = Given.optional("methods", methods);
        laboratory = Given.optional("laboratory", laboratory);
    }

    @Override
    public String serves() {
        return "air-test/" + topic;
    }

    @Override
    public String whyFailed() {
        return result == Result.FAILED || result == Result.OPEN ? others : "";
    }

    /** The same test with another result and one more remark. */
    AirTest judged(Result result, String standard, String remark) {
        return new AirTest(
                result,
                topic,
                place,
                standard,
                oxygen,
                carbonMonoxide,
                carbonDioxide,
                oil,
                water,
                odour,
                others.isEmpty() ? remark : others + "; " + remark,
                methods,
                laboratory);
    }

    /** Refuses a topic outside a list: under a slip of the pen no duty would be discharged and nothing judged. */
    public void topicAmong(List<String> topics) {
        if (!topics.contains(topic)) {
            throw StoreException.about(
                    "topic", "cannot be \"" + topic + "\".", "one of " + String.join(", ", topics) + ".");
        }
    }

    /** The gases and the oil that breathing air has limits for and of which no figure was given. */
    List<String> lacking() {
        Map<String, Optional<BigDecimal>> figures = new LinkedHashMap<>();
        figures.put("oxygen", oxygen);
        figures.put("carbon monoxide", carbonMonoxide);
        figures.put("carbon dioxide", carbonDioxide);
        figures.put("oil", oil);
        return figures.entrySet().stream()
                .filter(e -> e.getValue().isEmpty())
                .map(Map.Entry::getKey)
                .toList();
    }
}
