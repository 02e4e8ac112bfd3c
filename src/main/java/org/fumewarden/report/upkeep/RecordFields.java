package org.fumewarden.report.upkeep;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
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

    /** Sources, then the words of tables that mean them. */
    private static final String WORDS = """
            site.employer, site.address | employer name and address
            site.employer | employer
            item.id, item.name | wearer; employee name or id
            item.name | names
            item.id, item.place | id and location of the extraction system
            item.process | process
            item.substances | substances
            item.id | compressor id
            place | place; places
            entry.on | date; dates; when
            entry.before | last exam date
            entry.by | tester; examiner
            entry.by, laboratory | sampler and analyst
            entry.by, designation, examiner-employer, signature | examiner name-designation-employer-signature
            operating-conditions | operating conditions
            intended-performance, performance-met | intended performance and whether met
            particulars | HSE-approved particulars
            exposure-history | exposure history
            model | make; model; style; size; make-model-size; make-model-size-material
            method | method; test type
            methods | methods; procedure and duration
            exercises | exercises
            result | result; pass/fail; QLFT: pass or fail; able to use
            result, others | results
            fit-factor, recording | QNFT: fit factor + strip chart or other recording
            test-equipment | equipment serial
            oxygen | O2
            carbon-monoxide | CO
            carbon-dioxide | CO2
            oil | oil
            water | water or dew point
            odour | odour
            result, limits | conclusions on fitness
            limits | limits
            follow-up | follow-up needed
            copy-given | copy given to employee
            content | content
            signature | signature
            action | repairs needed
            laboratory | laboratory
            """;

    private static final Map<String, List<String>> SOURCES = WORDS.lines()
            .map(line -> line.split(" \\| "))
            .flatMap(row ->
                    Arrays.stream(row[1].split("; ")).map(words -> Map.entry(words, List.of(row[0].split(", ")))))
            .collect(Collectors.toMap(Map.Entry::getKey, Map.Entry::getValue));

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
