package org.fumewarden.check;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.commons.lang3.StringUtils;
import org.fumewarden.codes.Nearest;
import org.fumewarden.codes.Problem;
import org.fumewarden.engine.Phase;
import org.fumewarden.model.Confidence;

/** The shape of rules: ids, metadata, forbidden words, numbers, length, consequence. */
final class RuleShape {
    private static final int LONGEST = 25;
    private static final Pattern ID = Pattern.compile("[A-Z][A-Z0-9-]*-[A-Z]+-\\d{3}");
    private static final Set<String> REQUIRED = Set.of("source", "clause", "confidence", "says");
    private static final Set<String> METADATA =
            Set.of("source", "clause", "confidence", "says", "from", "until", "overrides", "edition");
    private static final Pattern FORBIDDEN = Pattern.compile(
            "\\b(salience|agenda-group|activation-group|modify|update|delete|retract|insertLogical|global"
                    + "|eval|lock-on-active|no-loop|timer|calendars|duration|ruleflow-group|kcontext|auto-focus|enabled"
                    + "|date-effective|date-expires|declare|function|query|System|Math)\\b");
    private static final Pattern BARE_META = Pattern.compile("@(\\w+)\\s*(?:\\(\\s*(?=[^\"\\s])|(?=[^\\w\\s(]))");
    private static final Pattern META_NAME = Pattern.compile("@(\\w+)");
    private static final Pattern NUMBER = Pattern.compile("(?<![\\w$.])\\d+(?:\\.\\d+)?");
    private static final Pattern NUMBER_WORD = Pattern.compile("\"[+-]?\\d+(?:\\.\\d+)?\"");
    private static final Pattern INSERT = Pattern.compile(
            "\\s*insert\\s*\\(\\s*(?:new\\s+[A-Z]\\w*|[A-Z]\\w*\\.\\w+)\\s*\\(.*\\)\\s*\\)\\s*", Pattern.DOTALL);

    private final Map<String, DrlRule> byId = new LinkedHashMap<>();
    private final List<Problem> problems = new ArrayList<>();

    /** Checks the files of a rule base, and returns all that is wrong. */
    static List<Problem> check(List<DrlFile> files) {
        RuleShape shape = new RuleShape();
        for (DrlFile file : files) {
            shape.file(file);
            file.rules().forEach(shape::rule);
        }
        return shape.problems;
    }

    private void file(DrlFile file) {
        if (Phase.of(file.phase()).isEmpty()) {
            List<String> known =
                    java.util.Arrays.stream(Phase.values()).map(Phase::key).toList();
            problems.add(
                    new Problem(file.file(), 0, "", "is named after no phase.", Nearest.remedy(file.phase(), known)));
        }
        String expected = "rules." + file.folder().replace('-', '_') + "." + file.phase();
        Matcher matcher = Pattern.compile("(?m)^\\s*package\\s+([\\w.]+)")
                .matcher(file.text().masked());
        if (!matcher.find() || !matcher.group(1).equals(expected)) {
            problems.add(new Problem(file.file(), 1, "", "is in another package.", "package " + expected + ";"));
        }
        Matcher word = FORBIDDEN.matcher(file.text().masked());
        while (word.find()) {
            problems.add(new Problem(
                    file.file(),
                    DrlFile.lineAt(file.text(), word.start()),
                    "",
                    "uses the word \"" + word.group() + "\": rules conclude, they do not act or take turns.",
                    "conclude it in an earlier phase, or move the number to a table."));
        }
    }

    private void rule(DrlRule rule) {
        id(rule);
        metadata(rule);
        if (rule.lines() > LONGEST) {
            say(rule, "has " + rule.lines() + " lines; at most " + LONGEST + ".", "it is two rules.");
        }
        numbers(rule);
        List<String> statements = List.of(rule.consequence().masked().split(";")).stream()
                .filter(StringUtils::isNotBlank)
                .toList();
        if (statements.size() != 1 || !INSERT.matcher(statements.get(0)).matches()) {
            say(
                    rule,
                    "does more than conclude one thing.",
                    "only insert( new Conclusion( ... ) ); in then, one a rule.");
        }
    }

    private void id(DrlRule rule) {
        DrlRule other = byId.putIfAbsent(rule.id(), rule);
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

    private void metadata(DrlRule rule) {
        for (String name : REQUIRED.stream().sorted().toList()) {
            if (StringUtils.isBlank(rule.meta().get(name))) {
                say(rule, "has no @" + name + ".", "add @" + name + "(\"...\")" + purpose(name));
            }
        }
        Matcher bare = BARE_META.matcher(rule.head().masked());
        while (bare.find()) {
            say(rule, "has @" + bare.group(1) + " without quotes.", "@" + bare.group(1) + "(\"...\").");
        }
        Matcher named = META_NAME.matcher(rule.head().masked());
        List<String> seen = new ArrayList<>();
        while (named.find()) {
            if (!METADATA.contains(named.group(1))) {
                say(
                        rule,
                        "has @" + named.group(1) + ", which nothing reads.",
                        Nearest.remedy(named.group(1), METADATA));
            } else if (seen.contains(named.group(1))) {
                say(rule, "has @" + named.group(1) + " twice.", "keep one.");
            }
            seen.add(named.group(1));
        }
        String confidence = rule.meta().getOrDefault("confidence", "memory");
        List<String> known = java.util.Arrays.stream(Confidence.values())
                .map(Confidence::key)
                .toList();
        if (!known.contains(confidence)) {
            say(rule, "has the confidence \"" + confidence + "\".", Nearest.remedy(confidence, known));
        }
        for (String day : List.of("from", "until")) {
            if (rule.meta().containsKey(day) && !rule.meta().get(day).matches("\\d{4}-\\d{2}-\\d{2}")) {
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

    private void numbers(DrlRule rule) {
        Matcher number = NUMBER.matcher(rule.conditions().masked());
        while (number.find()) {
            if (!number.group().equals("0") && !number.group().equals("1")) {
                int line = rule.conditionLine()
                        + StringUtils.countMatches(rule.conditions().masked().substring(0, number.start()), '\n');
                problems.add(rule.problem(
                        line,
                        "has the number " + number.group() + " in a condition.",
                        "put it into a table of kind thresholds and compare with it."));
            }
        }
        Matcher word = NUMBER_WORD.matcher(
                rule.conditions().plain() + rule.consequence().plain());
        while (word.find()) {
            say(rule, "has the number " + word.group() + " in quotes.", "put it into a table of kind thresholds.");
        }
        Matcher concluded = NUMBER.matcher(rule.consequence().masked());
        while (concluded.find()) {
            if (!concluded.group().equals("0") && !concluded.group().equals("1")) {
                say(rule, "concludes the number " + concluded.group() + ".", "take it from a table.");
            }
        }
    }

    private void say(DrlRule rule, String message, String maybe) {
        problems.add(rule.problem(message, maybe));
    }
}
