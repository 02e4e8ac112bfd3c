package org.fumewarden.check;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.fumewarden.engine.WrittenRule;

/** A rule without one of its conditions: a constraint of a pattern, or a pattern that nothing else of the rule speaks of. */
final class Deletions {
    private static final Pattern START =
            Pattern.compile("\\b(?:not|exists)\\b|(?:\\$\\w+\\s*:\\s*)?\\b[A-Z]\\w*(?=\\s*\\()");
    private static final Pattern BINDING = Pattern.compile("\\$\\w+(?=\\s*:)");

    private final WrittenRule rule;
    private final String plain;
    private final String masked;
    private final List<Mutant> mutants = new ArrayList<>();

    private Deletions(WrittenRule rule) {
        this.rule = rule;
        this.plain = Mutant.written(rule);
        this.masked = Mutant.masked(plain);
    }

    static List<Mutant> of(WrittenRule rule) {
        Deletions deletions = new Deletions(rule);
        Matcher found = START.matcher(deletions.masked);
        int hidden = 0;
        while (found.find()) {
            int open = deletions.masked.indexOf('(', found.end());
            int end = deletions.afterBracket(open);
            boolean hides = found.group().equals("not") || found.group().equals("exists");
            // What stands inside of a hidden pattern goes with it, or constraint by constraint.
            if (found.start() >= hidden) {
                deletions.without(found.start(), end);
                hidden = hides ? end : hidden;
            }
            if (!hides) {
                deletions.constraints(open + 1, end - 1);
            }
        }
        return deletions.mutants;
    }

    /** Each part between two commas, with the comma beside it. */
    private void constraints(int start, int end) {
        List<Integer> cuts = new ArrayList<>(List.of(start - 1));
        int depth = 0;
        for (int at = start; at < end; at++) {
            char c = masked.charAt(at);
            depth += "([{".indexOf(c) >= 0 ? 1 : ")]}".indexOf(c) >= 0 ? -1 : 0;
            if (c == ',' && depth == 0) {
                cuts.add(at);
            }
        }
        cuts.add(end);
        for (int i = 1; i < cuts.size() && !plain.substring(start, end).isBlank(); i++) {
            boolean last = i == cuts.size() - 1;
            without(last && i > 1 ? cuts.get(i - 1) : cuts.get(i - 1) + 1, last ? end : cuts.get(i) + 1);
        }
    }

    private int afterBracket(int open) {
        int depth = 0;
        for (int at = open; at < masked.length(); at++) {
            depth += masked.charAt(at) == '(' ? 1 : masked.charAt(at) == ')' ? -1 : 0;
            if (depth == 0) {
                return at + 1;
            }
        }
        return masked.length();
    }

    private void without(int start, int end) {
        String gone = plain.substring(start, end);
        String left = plain.substring(0, start) + " " + plain.substring(end);
        Matcher bound = BINDING.matcher(masked.substring(start, end));
        while (bound.find()) {
            Pattern used = Pattern.compile(Pattern.quote(bound.group()) + "\\b");
            if (used.matcher(left).find()
                    || used.matcher(rule.text().substring(rule.conditions().to()))
                            .find()) {
                return;
            }
        }
        mutants.add(new Mutant(rule, mutants.size() + 1, "deleted", gone.strip().replaceAll("\\s+", " "), left));
    }
}
