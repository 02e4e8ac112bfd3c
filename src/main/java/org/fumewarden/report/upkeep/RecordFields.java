package org.fumewarden.report.upkeep;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import org.apache.commons.lang3.StringUtils;
import org.fumewarden.report.html.Speech;

/**
 * Where the log and the register hold what a duty asks a record to say.
 *
 * <p>A source is {@code item.NAME}, {@code site.NAME}, {@code entry.NAME} or a field of the entry. A field with several sources
 * shows all of them.
 */
final class RecordFields {
    static final String GAP = "NOT RECORDED";
    private static final Pattern KEY = Pattern.compile("[a-z ]+(-[a-z ]+)+");

    private static final Map<String, List<String>> SOURCES = Map.ofEntries(
            Map.entry("employer name and address", List.of("site.employer", "site.address")),
            Map.entry("employer", List.of("site.employer")),
            Map.entry("wearer", List.of("item.id", "item.name")),
            Map.entry("employee name or id", List.of("item.id", "item.name")),
            Map.entry("names", List.of("item.name")),
            Map.entry("id and location of the extraction system", List.of("item.id", "item.place")),
            Map.entry("process", List.of("item.process")),
            Map.entry("substances", List.of("item.substances")),
            Map.entry("compressor id", List.of("item.id")),
            Map.entry("place", List.of("place")),
            Map.entry("places", List.of("place")),
            Map.entry("date", List.of("entry.on")),
            Map.entry("dates", List.of("entry.on")),
            Map.entry("when", List.of("entry.on")),
            Map.entry("last exam date", List.of("entry.before")),
            Map.entry("tester", List.of("entry.by")),
            Map.entry("examiner", List.of("entry.by")),
            Map.entry("sampler and analyst", List.of("entry.by", "laboratory")),
            Map.entry(
                    "examiner name-designation-employer-signature",
                    List.of("entry.by", "designation", "examiner-employer", "signature")),
            Map.entry("operating conditions", List.of("operating-conditions")),
            Map.entry("intended performance and whether met", List.of("intended-performance", "performance-met")),
            Map.entry("HSE-approved particulars", List.of("particulars")),
            Map.entry("exposure history", List.of("exposure-history")),
            Map.entry("make", List.of("model")),
            Map.entry("model", List.of("model")),
            Map.entry("style", List.of("model")),
            Map.entry("size", List.of("model")),
            Map.entry("make-model-size", List.of("model")),
            Map.entry("make-model-size-material", List.of("model")),
            Map.entry("method", List.of("method")),
            Map.entry("test type", List.of("method")),
            Map.entry("methods", List.of("methods")),
            Map.entry("procedure and duration", List.of("methods")),
            Map.entry("exercises", List.of("exercises")),
            Map.entry("result", List.of("result")),
            Map.entry("results", List.of("result", "others")),
            Map.entry("pass/fail", List.of("result")),
            Map.entry("QLFT: pass or fail", List.of("result")),
            Map.entry("QNFT: fit factor + strip chart or other recording", List.of("fit-factor", "recording")),
            Map.entry("equipment serial", List.of("test-equipment")),
            Map.entry("O2", List.of("oxygen")),
            Map.entry("CO", List.of("carbon-monoxide")),
            Map.entry("CO2", List.of("carbon-dioxide")),
            Map.entry("oil", List.of("oil")),
            Map.entry("water or dew point", List.of("water")),
            Map.entry("odour", List.of("odour")),
            Map.entry("able to use", List.of("result")),
            Map.entry("conclusions on fitness", List.of("result", "limits")),
            Map.entry("limits", List.of("limits")),
            Map.entry("follow-up needed", List.of("follow-up")),
            Map.entry("copy given to employee", List.of("copy-given")),
            Map.entry("content", List.of("content")),
            Map.entry("signature", List.of("signature")),
            Map.entry("repairs needed", List.of("action")),
            Map.entry("laboratory", List.of("laboratory")));

    /** A field that either of two sources answers: the finer one first. */
    private static final Map<String, List<String>> EITHER =
            Map.of("result or fit factor each exercise", List.of("fit-factor", "result"));

    private static final Map<String, String> UNITS = Map.of(
            "oxygen", " %", "carbon-monoxide", " ppm", "carbon-dioxide", " ppm", "oil", " mg/m3", "flow", " L/min");

    private static final Set<String> YES_OR_NO = Set.of("copy-given", "performance-met");

    private RecordFields() {}

    /** True when the log or the register has a place for the field; any other is written by hand. */
    static boolean held(String field) {
        return SOURCES.containsKey(field) || EITHER.containsKey(field);
    }

    /**
     * What is known of a field.
     *
     * @param known values by source
     */
    static String value(String field, Map<String, String> known) {
        if (field.startsWith("QNFT:") && !known.containsKey("fit-factor") && qualitative(known)) {
            return "does not apply";
        }
        if (EITHER.containsKey(field)) {
            return EITHER.get(field).stream()
                    .map(s -> worded(s, known))
                    .filter(v -> !v.isEmpty())
                    .findFirst()
                    .orElse(GAP);
        }
        List<String> parts = new ArrayList<>();
        for (String source : SOURCES.getOrDefault(field, List.of())) {
            String value = worded(source, known);
            boolean only = SOURCES.get(field).size() == 1;
            parts.add(value.isEmpty() ? (only ? GAP : named(source) + " " + GAP) : value);
        }
        return parts.stream().allMatch(p -> p.endsWith(GAP)) ? GAP : String.join("; ", parts);
    }

    private static boolean qualitative(Map<String, String> known) {
        return known.getOrDefault("method", "")
                .toLowerCase(java.util.Locale.ROOT)
                .contains("qualitative");
    }

    private static String named(String source) {
        return source.substring(source.indexOf('.') + 1).replace('-', ' ');
    }

    private static String worded(String source, Map<String, String> known) {
        String value = known.getOrDefault(source, "");
        if (YES_OR_NO.contains(source) && !value.isEmpty()) {
            return (source.equals("performance-met") ? "met: " : "") + (value.equals("true") ? "yes" : "no");
        }
        return value.isEmpty() ? "" : value + UNITS.getOrDefault(source, "");
    }

    /** A field of a record: in the words of the form, else a list of fields as that list. */
    static String named(String name, Speech speech) {
        String said = KEY.matcher(name).matches()
                ? StringUtils.uncapitalize(speech.words().sayOr("entry." + name, speech.say(name)))
                : speech.say(name);
        return KEY.matcher(said).matches() ? said.replace("-", ", ") : said;
    }
}
