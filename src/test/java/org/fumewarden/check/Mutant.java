package org.fumewarden.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.fumewarden.codes.RuleFolder;
import org.fumewarden.engine.WrittenRule;

/**
 * A rule with one comparison flipped.
 *
 * @param number of the comparison among those of its rule, 1 for the first
 * @param was the operator as it stands
 * @param line where it stands
 * @param untilThen the rule up to the word {@code then}
 */
record Mutant(WrittenRule rule, int number, String was, int line, String untilThen) {
    private static final Pattern OPERATOR = Pattern.compile("<=|>=|==|!=|<|>|\\bnot\\s+in\\b|\\bnot\\b|\\bexists\\b");
    private static final Pattern UNSEEN = Pattern.compile("\"[^\"]*\"|//[^\\n]*|/\\*.*?\\*/", Pattern.DOTALL);
    private static final Map<String, String> FLIPPED = Map.of(
            "<", "<=", "<=", "<", ">", ">=", ">=", ">", "==", "!=", "!=", "==", "not in", "in", "not", "exists",
            "exists", "not");

    /** Every flipped comparison of the rules, in the order of files. */
    static List<Mutant> all(RuleFolder folder) {
        List<Mutant> mutants = new ArrayList<>();
        for (WrittenRule rule : RuleBaseCheck.rules(folder)) {
            String conditions = rule.text()
                    .substring(rule.conditions().from(), rule.conditions().to());
            Matcher found = OPERATOR.matcher(
                    UNSEEN.matcher(conditions).replaceAll(m -> m.group().replaceAll("[^\\n]", " ")));
            int number = 0;
            while (found.find()) {
                String was = found.group().replaceAll("\\s+", " ");
                String before = rule.text().substring(0, rule.conditions().from() + found.start());
                mutants.add(new Mutant(
                        rule,
                        ++number,
                        was,
                        rule.line()
                                + (int) before.chars().filter(c -> c == '\n').count(),
                        before + FLIPPED.get(was) + conditions.substring(found.end())));
            }
        }
        return mutants;
    }

    /** The name by which a survivor is listed. */
    String key() {
        return rule.id() + " " + number + " " + was;
    }

    /** The rule as the text of a file with a package of its own. */
    String text(String drlPackage) {
        String rest = rule.text().substring(rule.conditions().to());
        return "package " + drlPackage + ";\nimport org.fumewarden.model.*;\nimport java.util.List;\n" + untilThen
                + rest.replaceFirst("then", "then org.fumewarden.engine.Budget.spend();") + "\n";
    }

    /** A package that still tells the folder of the rule. */
    String drlPackage(int serial) {
        return "rules." + rule.folder().replace('-', '_') + ".m" + serial;
    }
}
