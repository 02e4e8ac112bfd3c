package org.fumewarden.task;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.fumewarden.endurance.EnduranceCurve;
import org.fumewarden.endurance.MeasuredBreakthrough;
import org.fumewarden.model.Answer;
import org.fumewarden.model.Input;
import org.fumewarden.model.Unknown;

/**
 * A described task.
 *
 * @param on the day whose rules hold
 * @param inputs every answer, measurement, exposure and open question, in the order of the vocabulary
 * @param readings exposures whose level is still to be reckoned from samples, stretches of a shift, or a room model
 * @param file name of the file, for messages
 * @param lines the lines of answers and exposures in it, by path
 * @param curves run times of the unit that the user measured, one curve for each pack
 * @param breakthroughs times that the maker of the filter measured, by agent
 * @param register what the register of the site said of the wearer and the kit
 */
public record Task(
        String title,
        String code,
        LocalDate on,
        List<Input> inputs,
        List<Reading> readings,
        String file,
        Map<String, Integer> lines,
        List<EnduranceCurve> curves,
        Map<String, MeasuredBreakthrough> breakthroughs,
        List<RegisterNote> register) {
    private static final String CONFINED = "confined-space";
    private static final Answer INSIDE = new Answer("vessel", "inside", "task.vessel");

    public Task {
        inputs = placed(inputs);
        readings = List.copyOf(readings);
        lines = Map.copyOf(lines);
        curves = List.copyOf(curves);
        breakthroughs = Map.copyOf(breakthroughs);
        register = List.copyOf(register);
    }

    /** The inside of a container is a confined space, whatever was told of the place around it. */
    private static List<Input> placed(List<Input> inputs) {
        if (!inputs.contains(INSIDE) || inputs.stream().anyMatch(i -> is(i, "place") && confined(i))) {
            return List.copyOf(inputs);
        }
        List<Input> placed = new ArrayList<>(inputs);
        placed.removeIf(i -> is(i, "place"));
        placed.add(new Answer("place", CONFINED, INSIDE.path()));
        return List.copyOf(placed);
    }

    private static boolean is(Input input, String question) {
        return input instanceof Answer a && a.question().equals(question)
                || input instanceof Unknown u && u.question().equals(question);
    }

    private static boolean confined(Input input) {
        return input instanceof Answer a && a.value().equals(CONFINED);
    }

    /** A task that stands in no file. */
    public Task(String title, String code, LocalDate on, List<Input> inputs) {
        this(title, code, on, inputs, List.of(), "task", Map.of(), List.of(), Map.of(), List.of());
    }

    /** The same task with more inputs. */
    public Task with(List<Input> more) {
        List<Input> all = new ArrayList<>(inputs);
        all.addAll(more);
        return withInputs(all);
    }

    /** The same task with these inputs in place of its own. */
    public Task withInputs(List<Input> others) {
        return new Task(title, code, on, others, readings, file, lines, curves, breakthroughs, register);
    }

    /** The same task on another day. */
    public Task onDay(LocalDate day) {
        return new Task(title, code, day, inputs, readings, file, lines, curves, breakthroughs, register);
    }
}
