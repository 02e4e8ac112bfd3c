package org.fumewarden.check;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import org.apache.commons.lang3.StringUtils;
import org.apache.commons.lang3.math.NumberUtils;
import org.fumewarden.codes.Nearest;
import org.fumewarden.codes.Problem;
import org.fumewarden.engine.Phase;
import org.fumewarden.engine.WrittenFile;
import org.fumewarden.engine.WrittenRule;
import org.fumewarden.model.Confidence;
import org.fumewarden.model.Keyed;

/** The shape of rules: ids, metadata, forbidden words, numbers, length, consequence. */
final class RuleShape {
    private static final int LONGEST = 25;
    private static final Pattern ID = Pattern.compile("[A-Z][A-Z0-9-]*-[A-Z]+-\\d{3}");
    private static final Set<String> REQUIRED = Set.of("source", "clause", "confidence", "says");
    private static final Set<String> METADATA =
            Set.of("source", "clause", "confidence", "says", "from", "until", "overrides", "edition");
    private final Map<String, WrittenRule> byId = new LinkedHashMap<>();
    private final List<Problem> problems = new ArrayList<>();

    /** Checks the files of a rule base, and returns all that is wrong. */
    static List<Problem> check(List<WrittenFile> files) {
        RuleShape shape = new RuleShape();
        for (WrittenFile file : files) {
            shape.file(file);
            file.rules().forEach(shape::rule);
        }
        return shape.problems;
    }

    private void file(WrittenFile file) {
        if (Keyed.find(Phase.class, file.phase()).isEmpty()) {
            List<String> known = Keyed.keys(Phase.class);
            problems.add(
                    new Problem(file.file(), 0, "", "is named after no phase.", Nearest.remedy(file.phase(), known)));
        }
        String expected = "rules." + file.folder().replace('-', '_') + "." + file.phase();
        if (file.refused().isEmpty() && !file.named().equals(expected)) {
            problems.add(new Problem(file.file(), 1, "", "is in another package.", "package " + expected + ";"));
        }
        problems.addAll(file.refused());
    }

    private void rule(WrittenRule rule) {
        id(rule);
        metadata(rule);
        if (rule.lines() > LONGEST) {
            say(rule, "has " + rule.lines() + " lines; at most " + LONGEST + ".", "it is two rules.");
        }
        numbers(rule);
        if (rule.patterns().stream().allMatch(WrittenRule.Asked::hidden)) {
            say(rule, "rests on nothing that is there.", "name a fact that it is about, outside not and exists.");
        }
        if (rule.made().isEmpty()) {
            say(
                    rule,
                    "does more than conclude one thing.",
                    "only insert( new Conclusion( ... ) ); in then, one a rule.");
        }
    }

    private void id(WrittenRule rule) {
        WrittenRule other = byId.putIfAbsent(rule.id(), rule);
        if (other != null) {
            say(
                    rule,
                    "is the id of another rule too: " + other.file() + ":" + other.line() + ".",
                    "take the next ten.");
        }
        String expected =
                rule.folder().toUpperCase(Locale.ROOT) + "-" + rule.phase().toUpperCase(Locale.ROOT) + "-";
        if (!ID.matcher(rule.id()).matches() || !rule.id().startsWith(expected)) {
            say(rule, "is not the id of a rule in this file.", expected + "010.");
        } else if (!rule.name().contains(" ")) {
            say(rule, "has no sentence after its id.", "write what the rule states, as one would read it aloud.");
        }
    }

    private void metadata(WrittenRule rule) {
        for (String name : REQUIRED.stream().sorted().toList()) {
            if (rule.note(name).filter(StringUtils::isNotBlank).isEmpty()) {
                say(rule, "has no @" + name + ".", "add @" + name + "(\"...\")" + purpose(name));
            }
        }
        for (WrittenRule.Note note : rule.notes()) {
            String name = "@" + note.name();
            if (!note.quoted()) {
                say(rule, "has " + name + " without quotes.", name + "(\"...\").");
            }
            if (!METADATA.contains(note.name())) {
                say(rule, "has " + name + ", which nothing reads.", Nearest.remedy(note.name(), METADATA));
            } else if (note.repeated()) {
                say(rule, "has " + name + " twice.", "keep one.");
            }
        }
        String confidence = rule.note("confidence").orElse("memory");
        List<String> known = Keyed.keys(Confidence.class);
        if (!known.contains(confidence)) {
            say(rule, "has the confidence \"" + confidence + "\".", Nearest.remedy(confidence, known));
        }
        for (String day : List.of("from", "until")) {
            if (rule.note(day).filter(d -> !d.matches("\\d{4}-\\d{2}-\\d{2}")).isPresent()) {
                say(rule, "has no day in @" + day + ".", "write it as year-month-day, such as 2019-02-01.");
            }
        }
    }

    private static String purpose(String name) {
        return switch (name) {
            case "source" -> " with an id of rules/shared/sources.yaml.";
            case "clause" -> " with the paragraph that orders this conclusion.";
            case "confidence" -> " with read, cross-checked, derived, practice or memory.";
            default -> " with the sentence a reader sees.";
        };
    }

    private void numbers(WrittenRule rule) {
        for (WrittenRule.Asked pattern : rule.patterns()) {
            for (String number : numbers(rule, pattern.literals())) {
                problems.add(rule.problem(
                        pattern.line(),
                        "has the number " + number + " in a condition.",
                        "put it into a table of kind thresholds and compare with it."));
            }
        }
        for (String number :
                numbers(rule, rule.made().map(WrittenRule.Made::literals).orElse(List.of()))) {
            say(rule, "concludes the number " + number + ".", "take it from a table.");
        }
    }

    /** The numbers that belong into a table; those in quotes are complained of at once. */
    private List<String> numbers(WrittenRule rule, List<String> literals) {
        for (String literal : literals) {
            if (literal.startsWith("\"") && NumberUtils.isCreatable(literal.substring(1, literal.length() - 1))) {
                say(rule, "has the number " + literal + " in quotes.", "put it into a table of kind thresholds.");
            }
        }
        return literals.stream()
                .filter(l -> !l.startsWith("\"") && !l.equals("0") && !l.equals("1"))
                .toList();
    }

    private void say(WrittenRule rule, String message, String maybe) {
        problems.add(rule.problem(message, maybe));
    }
}
