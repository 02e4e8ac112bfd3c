package org.fumewarden.task;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.fumewarden.model.Input;

/**
 * A described task.
 *
 * @param on the day whose rules hold
 * @param inputs every answer, measurement, exposure and open question, in the order of the vocabulary
 * @param file name of the file, for messages
 * @param lines the lines of exposures in it, by path
 */
public record Task(
        String title, String code, LocalDate on, List<Input> inputs, String file, Map<String, Integer> lines) {
    public Task {
        inputs = List.copyOf(inputs);
        lines = Map.copyOf(lines);
    }

    /** A task that stands in no file. */
    public Task(String title, String code, LocalDate on, List<Input> inputs) {
        this(title, code, on, inputs, "task", Map.of());
    }
}
