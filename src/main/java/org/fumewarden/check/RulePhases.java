package org.fumewarden.check;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.fumewarden.codes.Nearest;
import org.fumewarden.codes.Problem;
import org.fumewarden.engine.Phase;
import org.fumewarden.engine.WrittenRule;
import org.fumewarden.model.Keyed;

/** What rules may read of each other: phases are rooms, and a rule negates only what an earlier room concluded. */
final class RulePhases {
    private final List<WrittenRule> rules;
    private final List<List<String>> folders;
    private final List<Problem> problems = new ArrayList<>();

    private RulePhases(List<WrittenRule> rules, List<List<String>> folders) {
        this.rules = rules;
        this.folders = folders;
    }

    /**
     * Checks the rules of a whole rule base.
     *
     * @param folders for each code the rule folders that decide under it
     */
    static List<Problem> check(List<WrittenRule> rules, List<List<String>> folders) {
        RulePhases phases = new RulePhases(rules, folders);
        rules.forEach(phases::rule);
        return phases.problems;
    }

    private void rule(WrittenRule rule) {
        for (WrittenRule.Asked pattern : rule.patterns()) {
            if (FactTypes.named(pattern.type()).isEmpty() && !pattern.type().equals("List")) {
                say(rule, pattern.line(), "matches the unknown type " + pattern.type() + ".", "see model/.");
            }
            if (FactTypes.isConclusion(pattern.type())) {
                read(rule, pattern);
            }
        }
        rule.note("overrides").ifPresent(target -> overrides(rule, target));
    }

    private void read(WrittenRule rule, WrittenRule.Asked pattern) {
        List<WrittenRule> makers = rules.stream()
                .filter(r -> r.concludes().filter(pattern.type()::equals).isPresent())
                .filter(r -> together(r, rule))
                .toList();
        List<WrittenRule> visible =
                makers.stream().filter(r -> order(r) <= order(rule)).toList();
        if (visible.isEmpty()) {
            say(
                    rule,
                    pattern.line(),
                    "reads " + pattern.type() + ", which no rule up to its phase concludes.",
                    "move it to a later phase, or drop the rule.");
            return;
        }
        if (pattern.hidden()) {
            visible.stream()
                    .filter(r -> order(r) == order(rule))
                    .findFirst()
                    .ifPresent(r -> say(
                            rule,
                            pattern.line(),
                            "negates or counts " + pattern.type() + ", which its own phase concludes (" + r.id() + ").",
                            "let an earlier phase conclude it."));
        }
        words(rule, pattern, visible);
    }

    /** A word that no rule ever concludes makes the reader unreachable. */
    private void words(WrittenRule rule, WrittenRule.Asked pattern, List<WrittenRule> makers) {
        List<String> parts = FactTypes.parts(FactTypes.named(pattern.type()).orElseThrow());
        pattern.words().forEach((part, words) -> {
            int index = parts.indexOf(part);
            List<Optional<String>> concluded =
                    makers.stream().map(m -> argument(m, index)).toList();
            if (index < 0 || concluded.stream().anyMatch(Optional::isEmpty)) {
                return;
            }
            Set<String> known = concluded.stream().map(Optional::get).collect(Collectors.toCollection(TreeSet::new));
            for (String word : words) {
                if (!known.contains(word)) {
                    say(
                            rule,
                            pattern.line(),
                            "waits for " + pattern.type() + " with " + part + " \"" + word
                                    + "\", which no rule concludes.",
                            Nearest.remedy(word, known));
                }
            }
        });
    }

    /** The word that stands at a place of the conclusion's constructor; empty when it is worked out. */
    private static Optional<String> argument(WrittenRule rule, int index) {
        List<Optional<String>> words = rule.made().map(WrittenRule.Made::words).orElse(List.of());
        return index >= 0 && index < words.size() ? words.get(index) : Optional.empty();
    }

    private void overrides(WrittenRule rule, String target) {
        Map<String, WrittenRule> known = new LinkedHashMap<>();
        rules.stream().filter(r -> together(r, rule)).forEach(r -> known.put(r.id(), r));
        WrittenRule found = known.get(target);
        if (found == null) {
            say(
                    rule,
                    rule.line(),
                    "overrides \"" + target + "\", which is not a rule.",
                    Nearest.remedy(target, known.keySet()));
        } else if (!found.phase().equals(rule.phase())) {
            say(
                    rule,
                    rule.line(),
                    "overrides a rule of the phase " + found.phase() + ".",
                    "a rule lifts only what its own phase concludes.");
        } else {
            overriddenIsNotRead(rule, found);
        }
    }

    /** A conclusion that may still be lifted must not be read before the phase ends. */
    private void overriddenIsNotRead(WrittenRule rule, WrittenRule found) {
        String type = found.concludes().orElse("");
        rules.stream()
                .filter(r -> together(r, rule) && r.phase().equals(rule.phase()))
                .filter(r -> r.patterns().stream().anyMatch(p -> p.type().equals(type)))
                .forEach(r -> say(
                        r,
                        r.line(),
                        "reads " + type + " in the phase in which " + rule.id() + " may still lift it.",
                        "move it to a later phase."));
    }

    /** True when two rules can decide one task. */
    private boolean together(WrittenRule a, WrittenRule b) {
        return folders.stream().anyMatch(f -> f.contains(a.folder()) && f.contains(b.folder()));
    }

    private static int order(WrittenRule rule) {
        return Keyed.find(Phase.class, rule.phase()).map(Phase::ordinal).orElse(0);
    }

    private void say(WrittenRule rule, int line, String message, String maybe) {
        problems.add(rule.problem(line, message, maybe));
    }
}
