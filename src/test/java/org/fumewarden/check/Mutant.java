package org.fumewarden.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.fumewarden.codes.RuleFolder;

/**
 * A rule with one comparison flipped, or without one of its conditions.
 *
 * @param number of the comparison or condition among those of its rule, 1 for the first
 * @param was the operator as it stands, or {@code deleted}
 * @param touched the words that were changed
 */
record Mutant(DrlRule rule, int number, String was, String touched, String conditions) {
    private static final Pattern OPERATOR = Pattern.compile("<=|>=|==|!=|<|>|\\bnot\\s+in\\b|\\bnot\\b|\\bexists\\b");
    private static final Map<String, String> FLIPPED = Map.of(
            "<", "<=", "<=", "<", ">", ">=", ">=", ">", "==", "!=", "!=", "==", "not in", "in", "not", "exists",
            "exists", "not");

    /** Every mutant of the rules, in the order of files. */
    static List<Mutant> all(RuleFolder folder) {
        return RuleBaseCheck.rules(folder).stream()
                .flatMap(rule -> Stream.concat(flipped(rule).stream(), Deletions.of(rule).stream()))
                .toList();
    }

    private static List<Mutant> flipped(DrlRule rule) {
        List<Mutant> mutants = new ArrayList<>();
        Matcher found = OPERATOR.matcher(rule.conditions().masked());
        String plain = rule.conditions().plain();
        while (found.find()) {
            String was = found.group().replaceAll("\\s+", " ");
            String changed = plain.substring(0, found.start()) + FLIPPED.get(was) + plain.substring(found.end());
            mutants.add(new Mutant(rule, mutants.size() + 1, was, was, changed));
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
