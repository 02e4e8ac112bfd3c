package org.fumewarden.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.fumewarden.codes.RuleFolder;
import org.fumewarden.engine.WrittenRule;

/**
 * A rule with one comparison flipped, or without one of its conditions.
 *
 * @param number of the comparison or condition among those of its rule, 1 for the first
 * @param was the operator as it stands, or {@code deleted}
 * @param touched the words that were changed
 */
record Mutant(WrittenRule rule, int number, String was, String touched, String conditions) {
    private static final Pattern OPERATOR = Pattern.compile("<=|>=|==|!=|<|>|\\bnot\\s+in\\b|\\bnot\\b|\\bexists\\b");
    private static final Pattern UNSEEN = Pattern.compile("\"[^\"]*\"|//[^\\n]*|/\\*.*?\\*/", Pattern.DOTALL);
    private static final Map<String, String> FLIPPED = Map.of(
            "<", "<=", "<=", "<", ">", ">=", ">=", ">", "==", "!=", "!=", "==", "not in", "in", "not", "exists",
            "exists", "not");

    /** Every mutant of the rules, in the order of files. */
    static List<Mutant> all(RuleFolder folder) {
        return RuleBaseCheck.rules(folder).stream()
                .flatMap(rule -> Stream.concat(flipped(rule).stream(), Deletions.of(rule).stream()))
                .toList();
    }

    private static List<Mutant> flipped(WrittenRule rule) {
        List<Mutant> mutants = new ArrayList<>();
        String written = written(rule);
        Matcher found = OPERATOR.matcher(masked(written));
        while (found.find()) {
            String was = found.group().replaceAll("\\s+", " ");
            String changed = written.substring(0, found.start()) + FLIPPED.get(was) + written.substring(found.end());
            mutants.add(new Mutant(rule, mutants.size() + 1, was, was, changed));
        }
        return mutants;
    }

    /** The conditions of a rule as written. */
    static String written(WrittenRule rule) {
        return rule.text().substring(rule.conditions().from(), rule.conditions().to());
    }

    /** The same length of text with blanks for quotations and comments. */
    static String masked(String text) {
        return UNSEEN.matcher(text).replaceAll(m -> m.group().replaceAll("[^\\n]", " "));
    }

    /** The name by which a survivor is listed. */
    String key() {
        return rule.id() + " " + number + " " + was;
    }

    /** The rule as the text of a file with a package of its own. */
    String text(String drlPackage) {
        String head = rule.text().substring(0, rule.conditions().from());
        String rest = rule.text().substring(rule.conditions().to());
        return "package " + drlPackage + ";\nimport org.fumewarden.model.*;\nimport java.util.List;\n" + head
                + conditions + rest.replaceFirst("then", "then org.fumewarden.engine.Budget.spend();") + "\n";
    }

    /** A package that still tells the folder of the rule. */
    String drlPackage(int serial) {
        return "rules." + rule.folder().replace('-', '_') + ".m" + serial;
    }
}
