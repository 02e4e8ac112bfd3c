package org.fumewarden.whatif;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.fumewarden.advice.Advice;
import org.fumewarden.advice.Bench;
import org.fumewarden.advice.OpenQuestion;
import org.fumewarden.advice.Suitability;
import org.fumewarden.codes.Question;
import org.fumewarden.codes.Vocabulary;
import org.fumewarden.model.Limit;
import org.fumewarden.model.Row;
import org.fumewarden.model.Unit;

/** Which single open question, once answered, would settle most. */
public final class AnswerValue {
    /** Multiples of the limit that are tried for an unknown level. */
    private static final List<String> MULTIPLES = List.of("0.5", "5", "30", "500");

    private final Bench bench;
    private final Vocabulary vocabulary;

    public AnswerValue(Bench bench) {
        this.bench = bench;
        this.vocabulary = bench.book().vocabulary();
    }

    /**
     * What an answer would settle.
     *
     * @param least undecided classes and open questions that the least helpful answer settles
     * @param most the same for the most helpful answer
     * @param answers how many answers were tried
     */
    public record Worth(String question, String ask, int least, int most, int answers) {}

    /** The open questions, most useful first: by what the least helpful answer settles, then by the most helpful. */
    public List<Worth> rank() {
        Advice now = bench.advise();
        int open = open(now);
        List<Worth> worths = new ArrayList<>();
        for (OpenQuestion question : now.questions()) {
            List<Map<String, String>> answers = answers(question.question(), now);
            int least = Integer.MAX_VALUE;
            int most = 0;
            for (Map<String, String> answer : answers) {
                int settled = open - open(bench.advise(answer));
                least = Math.min(least, settled);
                most = Math.max(most, settled);
            }
            if (!answers.isEmpty()) {
                worths.add(new Worth(question.question(), question.ask(), least, most, answers.size()));
            }
        }
        worths.sort(Comparator.comparingInt((Worth w) -> -w.least())
                .thenComparingInt(w -> -w.most())
                .thenComparing(Worth::question));
        return worths;
    }

    private static int open(Advice advice) {
        return advice.with(Suitability.UNDECIDED).size() + advice.questions().size();
    }

    private List<Map<String, String>> answers(String id, Advice now) {
        return vocabulary.question(id).map(this::known).orElseGet(() -> levels(id, now));
    }

    private List<Map<String, String>> known(Question question) {
        Set<String> words = new LinkedHashSet<>(vocabulary.choices(question).keySet());
        if (question.kind().equals("flag")) {
            words.addAll(List.of("true", "false"));
        }
        if (question.kind().equals("percent")) {
            words.addAll(List.of("20.9 %", "18 %"));
        }
        if (question.kind().equals("duration")) {
            words.addAll(List.of("30 min", "4 h"));
        }
        return words.stream().map(w -> Map.of(question.path(), w)).toList();
    }

    private List<Map<String, String>> levels(String id, Advice now) {
        List<Map<String, String>> answers = new ArrayList<>();
        String[] parts = id.split("\\.");
        if (parts.length != 3) {
            return answers;
        }
        for (Row row : bench.advisor(bench.code()).base().rowsOn(now.on())) {
            if (row instanceof Limit limit
                    && limit.agent().equals(parts[1])
                    && limit.averaging().key().equals(parts[2])) {
                MULTIPLES.forEach(m -> answers.add(Map.of(
                        "exposures." + parts[1] + "." + parts[2],
                        limit.value().multiply(new java.math.BigDecimal(m)).toPlainString() + " " + unit(limit))));
            }
        }
        return answers;
    }

    private static String unit(Limit limit) {
        return limit.unit() == Unit.PPM ? "ppm" : "mg/m3";
    }
}
