package org.fumewarden.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.commons.lang3.StringUtils;
import org.fumewarden.codes.Problem;

/**
 * One rule as it stands in its file.
 *
 * @param folder rule folder, {@code shared} or a code
 * @param phase name of the rule file without its ending
 * @param line of the word {@code rule}
 * @param lines how many lines it takes
 * @param meta metadata by name, quotes removed
 * @param head what stands between the name and {@code when}
 * @param conditions what stands between {@code when} and {@code then}
 * @param consequence what stands between {@code then} and {@code end}
 * @param conditionLine line on which the conditions begin
 * @param concludes the type of the conclusion, when the consequence inserts one
 */
record DrlRule(
        String file,
        String folder,
        String phase,
        String name,
        int line,
        int lines,
        Map<String, String> meta,
        DrlText head,
        DrlText conditions,
        DrlText consequence,
        int conditionLine,
        Optional<String> concludes) {
    private static final Pattern HIDING = Pattern.compile("\\b(not|exists|forall|accumulate|collect)\\b");
    private static final Pattern PATTERN = Pattern.compile("(?:\\$(\\w+)\\s*:\\s*)?\\b([A-Z]\\w*)\\s*\\(");
    private static final Pattern CONCLUDED =
            Pattern.compile("insert\\s*\\(\\s*(?:new\\s+([A-Z]\\w*)\\s*\\(|([A-Z]\\w*)\\.)");

    /**
     * A pattern of the conditions.
     *
     * @param binding name it is bound to, without the dollar sign; empty when it is not
     * @param inside text between its brackets, without comments
     * @param hidden true inside not, exists, forall, accumulate or collect
     */
    record Condition(String binding, String type, String inside, int line, boolean hidden) {}

    String id() {
        return StringUtils.substringBefore(name, " ");
    }

    /** Every pattern of the conditions, in order. */
    List<Condition> patterns() {
        List<int[]> hidden = hidden();
        List<Condition> found = new ArrayList<>();
        Matcher matcher = PATTERN.matcher(conditions.masked());
        while (matcher.find()) {
            int at = matcher.start(2);
            int open = matcher.end() - 1;
            String inside =
                    conditions.plain().substring(open + 1, Math.max(open + 1, conditions.afterBracket(open) - 1));
            found.add(new Condition(
                    StringUtils.defaultString(matcher.group(1)),
                    matcher.group(2),
                    inside,
                    conditionLine + StringUtils.countMatches(conditions.masked().substring(0, at), '\n'),
                    hidden.stream().anyMatch(span -> at >= span[0] && at < span[1])));
        }
        return found;
    }

    /** Where patterns stand whose facts the match does not carry. */
    List<int[]> hidden() {
        List<int[]> spans = new ArrayList<>();
        Matcher matcher = HIDING.matcher(conditions.masked());
        while (matcher.find()) {
            int open = conditions.masked().indexOf('(', matcher.end());
            spans.add(
                    new int[] {matcher.start(), open < 0 ? conditions.masked().length() : conditions.afterBracket(open)
                    });
        }
        return spans;
    }

    /** The names bound to something that the match carries. */
    TreeSet<String> bindings() {
        List<int[]> hidden = hidden();
        TreeSet<String> names = new TreeSet<>();
        Matcher matcher = Pattern.compile("\\$(\\w+)\\s*:").matcher(conditions.masked());
        while (matcher.find()) {
            int at = matcher.start();
            if (hidden.stream().noneMatch(span -> at >= span[0] && at < span[1])) {
                names.add(matcher.group(1));
            }
        }
        return names;
    }

    /** The type of the conclusion, when a consequence inserts one. */
    static Optional<String> concluded(DrlText consequence) {
        Matcher matcher = CONCLUDED.matcher(consequence.masked());
        return matcher.find()
                ? Optional.of(matcher.group(1) != null ? matcher.group(1) : matcher.group(2))
                : Optional.empty();
    }

    Problem problem(String message, String maybe) {
        return problem(line, message, maybe);
    }

    Problem problem(int where, String message, String maybe) {
        return new Problem(file, where, id(), message, maybe);
    }
}
