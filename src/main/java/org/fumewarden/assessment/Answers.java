package org.fumewarden.assessment;

import java.util.Optional;
import java.util.OptionalDouble;
import org.fumewarden.model.Answer;
import org.fumewarden.task.Task;

/** What a task answers. */
record Answers(Task task) {

    Optional<String> word(String question) {
        return task.inputs().stream()
                .filter(i -> i instanceof Answer a && a.question().equals(question))
                .map(i -> ((Answer) i).value())
                .findFirst();
    }

    OptionalDouble amount(String question) {
        return ShiftAssessment.amount(task, question);
    }
}
