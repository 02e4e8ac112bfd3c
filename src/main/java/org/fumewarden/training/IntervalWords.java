package org.fumewarden.training;

import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.commons.lang3.StringUtils;

/** Reads how often something is due, as people say it: "every 3 months", "quarterly", "once a year", "alle 2 Jahre". */
final class IntervalWords {
    private static final Map<String, String> WORDS = Map.ofEntries(
            Map.entry("daily|taeglich", "P1D"),
            Map.entry("weekly|woechentlich", "P7D"),
            Map.entry("monthly|monatlich", "P1M"),
            Map.entry("quarterly|quarter|vierteljaehrlich|vierteljahr|quartal", "P3M"),
            Map.entry("half yearly|six monthly|twice year|half year|halbjaehrlich|halbes jahr|halbjahr", "P6M"),
            Map.entry("yearly|annual|annually|jaehrlich", "P1Y"));
    private static final Map<String, String> NUMBERS = Map.of(
            "two|zwei|other",
            "2",
            "three|drei",
            "3",
            "four|vier",
            "4",
            "five|fuenf",
            "5",
            "six|sechs",
            "6",
            "twelve|zwoelf",
            "12");
    private static final Pattern COUNTED = Pattern.compile(
            "(?:(?<count>[0-9]{1,3}) ?)?(?:(?<day>days?|tage?n?)|(?<week>weeks?|wochen?)|(?<month>months?|monthly|monate?n?)|(?<year>years?|yearly|jahre?n?))");

    private IntervalWords() {}

    /** The period as ISO 8601 has it; empty when the answer is none. */
    static Optional<String> read(String answer) {
        String line = Plain.line(answer)
                .replaceAll(
                        "\\b(every|each|once|a|an|per|at least|in|all|alle|jeden?|jedes|einmal|im|pro|mindestens|nach|after|the)\\b",
                        " ");
        for (Map.Entry<String, String> number : NUMBERS.entrySet()) {
            line = line.replaceAll("\\b(" + number.getKey() + ")\\b(?! monthly$)", number.getValue());
        }
        String bare = StringUtils.normalizeSpace(line);
        Optional<String> word = WORDS.entrySet().stream()
                .filter(w -> bare.matches(w.getKey()))
                .map(Map.Entry::getValue)
                .findFirst();
        return word.or(() -> counted(bare));
    }

    private static Optional<String> counted(String bare) {
        Matcher counted = COUNTED.matcher(bare);
        if (!counted.matches()) {
            return Optional.empty();
        }
        int count = counted.group("count") == null ? 1 : Integer.parseInt(counted.group("count"));
        if (count == 0) {
            return Optional.empty();
        }
        return Optional.of(
                counted.group("day") != null
                        ? "P" + count + "D"
                        : counted.group("week") != null
                                ? "P" + 7 * count + "D"
                                : "P" + count + (counted.group("month") != null ? "M" : "Y"));
    }
}
