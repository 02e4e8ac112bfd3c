package org.fumewarden.whatif;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CancellationException;
import org.fumewarden.advice.Advice;
import org.fumewarden.advice.Bench;
import org.fumewarden.codes.Question;
import org.fumewarden.codes.Vocabulary;
import org.fumewarden.model.Answer;

/** What each single answer of a task would move if it were another one, the largest move first. */
public final class Turns {
    private final Bench bench;
    private final Vocabulary vocabulary;

    public Turns(Bench bench) {
        this.bench = bench;
        this.vocabulary = bench.book().vocabulary();
    }

    /**
     * One answer tried.
     *
     * @param classes how many classes of respirator get another verdict
     * @param moved how many statements differ in all
     */
    public record Turn(Question question, String value, Advice then, int classes, int moved) {}

    /**
     * For each of some questions the answer that moves most; those that move nothing are left out.
     *
     * @param questions ids; of a question without a choice or a yes nothing is tried
     */
    public List<Turn> rank(Collection<String> questions) {
        Advice now = bench.advise();
        Thread asking = Thread.currentThread();
        return vocabulary.questions().parallelStream()
                .filter(q -> questions.contains(q.id()))
                .flatMap(q -> answers(q, now).stream()
                        .map(a -> turn(q, a, now, asking))
                        .filter(t -> t.moved() > 0)
                        .sorted(LARGEST)
                        .limit(1))
                .sorted(LARGEST)
                .toList();
    }

    private static final Comparator<Turn> LARGEST = Comparator.comparingInt((Turn t) -> -t.classes())
            .thenComparingInt(t -> -t.moved())
            .thenComparing(t -> t.question().id())
            .thenComparing(Turn::value);

    private List<String> answers(Question question, Advice now) {
        List<String> answers = new ArrayList<>(vocabulary.choices(question).keySet());
        if (question.kind().equals("flag")) {
            answers.addAll(List.of("true", "false"));
        }
        now.inputs().stream()
                .filter(Answer.class::isInstance)
                .map(Answer.class::cast)
                .filter(a -> a.question().equals(question.id()))
                .forEach(a -> answers.remove(a.value()));
        return answers;
    }

    private Turn turn(Question question, String answer, Advice now, Thread asking) {
        if (asking.isInterrupted()) {
            throw new CancellationException("No one waits for these changes any more.");
        }
        Advice then = bench.advise(Map.of(question.path(), answer));
        List<Difference> found = Differences.between(now, then);
        int classes = (int)
                found.stream().filter(d -> d.what().startsWith("respirator ")).count();
        return new Turn(question, answer, then, classes, found.size());
    }
}
