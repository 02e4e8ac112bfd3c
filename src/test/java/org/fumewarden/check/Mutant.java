package org.fumewarden.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.fumewarden.codes.RuleFolder;

/**
 * A rule with one comparison flipped.
 *
 * @param number of the comparison among those of its rule, 1 for the first
 * @param was the operator as it stands
 * @param line where it stands
 */
record Mutant(DrlRule rule, int number, String was, int line, String conditions) {
    private static final Pattern OPERATOR = Pattern.compile("<=|>=|==|!=|<|>|\\bnot\\s+in\\b|\\bnot\\b|\\bexists\\b");
    private static final Map<String, String> FLIPPED = Map.of(
            "<", "<=", "<=", "<", ">", ">=", ">=", ">", "==", "!=", "!=", "==", "not in", "in", "not", "exists",
            "exists", "not");

    /** Every flipped comparison of the rules, in the order of files. */
    static List<Mutant> all(RuleFolder folder) {
        List<Mutant> mutants = new ArrayList<>();
        for (DrlRule rule : RuleBaseCheck.rules(folder)) {
            Matcher found = OPERATOR.matcher(rule.conditions().masked());
            int number = 0;
            while (found.find()) {
                String was = found.group().replaceAll("\\s+", " ");
                String plain = rule.conditions().plain();
                mutants.add(new Mutant(
                        rule,
                        ++number,
                        was,
                        rule.conditionLine()
                                + (int) plain.substring(0, found.start())
                                        .chars()
                                        .filter(c -> c == '\n')
                                        .count(),
                        plain.substring(0, found.start()) + FLIPPED.get(was) + plain.substring(found.end())));
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
        return "package " + drlPackage + ";\nimport org.fumewarden.model.*;\nimport java.util.List;\nrule \""
                + rule.name() + "\"\n"
                + rule.head().plain() + "when" + conditions + "then org.fumewarden.engine.Budget.spend();"
                + rule.consequence().plain() + "end\n";
    }

    /** A package that still tells the folder of the rule. */
    String drlPackage(int serial) {
        return "rules." + rule.folder().replace('-', '_') + ".m" + serial;
    }
}
