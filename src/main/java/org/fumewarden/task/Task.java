package org.fumewarden.task;

import java.time.LocalDate;
import java.util.List;
import org.fumewarden.model.Input;

/**
 * A described task.
 *
 * @param on the day whose rules hold
 * @param inputs every answer, measurement, exposure and open question, in the order of the vocabulary
 */
public record Task(String title, String code, LocalDate on, List<Input> inputs) {
    public Task {
        inputs = List.copyOf(inputs);
    }
}
