package org.fumewarden.web;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.concurrent.CancellationException;
import org.fumewarden.advice.Advice;
import org.fumewarden.advice.Bench;
import org.fumewarden.advice.OpenQuestion;
import org.fumewarden.codes.Question;
import org.fumewarden.codes.Vocabulary;
import org.fumewarden.model.Input;
import org.fumewarden.model.Unknown;
import org.fumewarden.whatif.Differences;

/**
 * Which questions matter for what was answered so far. The rules say it: a question matters when it is answered, when the
 * advice leaves it open, or when one of its answers, tried out, would change the advice.
 */
final class Relevance {
    /** Figures of the unit in use change its endurance, hardly ever the advice: shown when asked for, or once given. */
    private static final String UNIT = "unit";

    private final Bench bench;
    private final Vocabulary vocabulary;

    Relevance(Bench bench) {
        this.bench = bench;
        this.vocabulary = bench.book().vocabulary();
    }

    /** Ids of the questions that matter, in the order of the vocabulary. */
    List<String> questions() {
        Advice now = bench.advise();
        Set<String> open = new HashSet<>();
        now.questions().stream().map(OpenQuestion::question).forEach(open::add);
        Set<String> unknown = new HashSet<>();
        for (Input input : now.inputs()) {
            if (input instanceof Unknown u) {
                unknown.add(u.question());
            }
        }
        Thread asking = Thread.currentThread();
        return vocabulary.questions().parallelStream()
                .filter(q -> !q.group().equals(UNIT))
                .filter(q -> open.contains(q.id()) || !unknown.contains(q.id()) || turns(q, now, asking))
                .map(Question::id)
                .toList();
    }

    /** Tries the answers one after the other, in whichever thread; ends when the thread that asks is stopped. */
    private boolean turns(Question question, Advice now, Thread asking) {
        List<String> answers = new ArrayList<>(vocabulary.choices(question).keySet());
        answers.addAll(VocabularyJson.samples(question.kind()));
        return answers.stream().anyMatch(answer -> {
            if (asking.isInterrupted()) {
                throw new CancellationException("No one waits for these questions any more.");
            }
            Advice then = bench.advise(new TreeMap<>(Map.of(question.path(), answer)));
            return !Differences.between(now, then).isEmpty();
        });
    }
}
