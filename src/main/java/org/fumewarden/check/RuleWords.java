package org.fumewarden.check;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.fumewarden.codes.CodeBook;
import org.fumewarden.codes.Nearest;
import org.fumewarden.codes.Problem;
import org.fumewarden.codes.Question;
import org.fumewarden.engine.WrittenRule;
import org.fumewarden.model.Row;

/** The words of rules: questions, answers, cells of tables and placeholders must exist. */
final class RuleWords {
    private static final Pattern PLACEHOLDER = Pattern.compile("\\{([^}]*)}");
    private static final Set<String> WORDED = Set.of("choice", "flag", "text");

    private final List<CodeBook> books;
    private final Set<String> known = new TreeSet<>();
    private final Map<String, Set<String>> cells = new LinkedHashMap<>();
    private final List<Problem> problems = new ArrayList<>();

    private RuleWords(List<CodeBook> books, List<Row> elsewhere) {
        this.books = books;
        for (CodeBook book : books) {
            book.vocabulary().questions().forEach(q -> known.add(q.id()));
            book.tables().stream().flatMap(t -> t.rows().stream()).forEach(r -> index(r.row()));
        }
        elsewhere.forEach(this::index);
    }

    /**
     * Checks the rules of one folder against the tables that may stand beside it.
     *
     * @param elsewhere rows of shipped codes that this rule base does not hold, and that the rules may be written for
     */
    static List<Problem> check(List<WrittenRule> rules, List<CodeBook> books, List<Row> elsewhere) {
        RuleWords words = new RuleWords(books, elsewhere);
        rules.forEach(words::rule);
        return words.problems;
    }

    private void index(Row row) {
        FactTypes.words(row).forEach((part, word) -> cells.computeIfAbsent(
                        row.getClass().getSimpleName() + "." + part, k -> new TreeSet<>())
                .add(word));
    }

    private void rule(WrittenRule rule) {
        for (WrittenRule.Asked pattern : rule.patterns()) {
            Map<String, List<String>> literals = pattern.words();
            switch (pattern.type()) {
                case "Answer", "Measure", "Unknown" -> question(rule, pattern, literals);
                default -> {
                    if (FactTypes.isRow(pattern.type())) {
                        cells(rule, pattern, literals);
                    }
                }
            }
        }
        placeholders(rule);
    }

    private void question(WrittenRule rule, WrittenRule.Asked pattern, Map<String, List<String>> literals) {
        for (String id : literals.getOrDefault("question", List.of())) {
            if (!known.contains(id)) {
                problems.add(rule.problem(
                        pattern.line(), "asks \"" + id + "\", which is no question.", Nearest.remedy(id, known)));
                continue;
            }
            Question question = find(id).orElseThrow();
            boolean worded = WORDED.contains(question.kind());
            if (pattern.type().equals("Answer") && !worded || pattern.type().equals("Measure") && worded) {
                problems.add(rule.problem(
                        pattern.line(),
                        "reads \"" + id + "\" as " + pattern.type() + ", but it is a " + question.kind() + ".",
                        worded ? "Answer." : "Measure."));
            }
            Set<String> allowed = allowed(id, question);
            for (String value : literals.getOrDefault("value", List.of())) {
                if (!allowed.isEmpty() && !allowed.contains(value)) {
                    problems.add(rule.problem(
                            pattern.line(),
                            "compares \"" + id + "\" with \"" + value + "\", which is no answer to it.",
                            Nearest.remedy(value, allowed)));
                }
            }
        }
    }

    private Optional<Question> find(String id) {
        return books.stream().flatMap(b -> b.vocabulary().question(id).stream()).findFirst();
    }

    private Set<String> allowed(String id, Question question) {
        if (question.kind().equals("flag")) {
            return Set.of("true", "false");
        }
        if (!question.kind().equals("choice")) {
            return Set.of();
        }
        return books.stream()
                .flatMap(b ->
                        b.vocabulary().question(id).stream().flatMap(q -> b.vocabulary().choices(q).keySet().stream()))
                .collect(Collectors.toCollection(TreeSet::new));
    }

    /** True for a word that a rule puts together, such as "action-level-" and an agent. */
    private static boolean begins(Set<String> known, String word) {
        return word.endsWith("-") && known.stream().anyMatch(k -> k.startsWith(word));
    }

    private void cells(WrittenRule rule, WrittenRule.Asked pattern, Map<String, List<String>> literals) {
        literals.forEach((part, words) -> {
            Set<String> known = cells.getOrDefault(pattern.type() + "." + part, Set.of());
            for (String word : words) {
                if (!known.contains(word) && !begins(known, word)) {
                    problems.add(rule.problem(
                            pattern.line(),
                            "looks for a " + pattern.type() + " with " + part + " \"" + word
                                    + "\", but no table has one.",
                            Nearest.remedy(word, known)));
                }
            }
        });
    }

    private void placeholders(WrittenRule rule) {
        Optional<Class<?>> concluded = rule.concludes().flatMap(FactTypes::named);
        if (concluded.isEmpty()) {
            rule.concludes()
                    .ifPresent(t -> problems.add(rule.problem("concludes the unknown type " + t + ".", "see model/.")));
            return;
        }
        Map<String, String> facts = rule.patterns().stream()
                .filter(p -> !p.hidden() && !p.binding().isEmpty())
                .collect(Collectors.toMap(WrittenRule.Asked::binding, WrittenRule.Asked::type, (a, b) -> a));
        Matcher matcher = PLACEHOLDER.matcher(rule.note("says").orElse(""));
        while (matcher.find()) {
            String[] parts = matcher.group(1).split("\\.", 2);
            boolean resolves = parts.length == 1
                    ? FactTypes.hasPart(concluded.get(), parts[0])
                            || rule.bindings().contains(parts[0])
                    : Optional.ofNullable(facts.get(parts[0]))
                            .flatMap(FactTypes::named)
                            .filter(t -> FactTypes.hasPart(t, parts[1]))
                            .isPresent();
            if (!resolves) {
                Set<String> known = new TreeSet<>(FactTypes.parts(concluded.get()));
                known.addAll(rule.bindings());
                problems.add(rule.problem(
                        "says {" + matcher.group(1) + "}, which nothing fills.", Nearest.remedy(parts[0], known)));
            }
        }
    }
}
