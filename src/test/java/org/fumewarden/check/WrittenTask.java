package org.fumewarden.check;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import org.fumewarden.codes.Vocabulary;
import org.fumewarden.model.Answer;
import org.fumewarden.model.Exposure;
import org.fumewarden.model.Input;
import org.fumewarden.model.Judged;
import org.fumewarden.model.Measure;
import org.fumewarden.task.Task;

/** A random task as somebody would write it into a file; what is unknown is left out. */
final class WrittenTask {
    private static final Map<String, String> UNITS = Map.ofEntries(
            Map.entry("percent", " %"),
            Map.entry("length", " m"),
            Map.entry("volume", " m3"),
            Map.entry("flow", " L/min"),
            Map.entry("mass-flow", " kg/h"),
            Map.entry("duration", " min"),
            Map.entry("temperature", " C"),
            Map.entry("mass", " g"),
            Map.entry("pressure", " Pa"),
            Map.entry("energy", " Wh"),
            Map.entry("area", " cm2"),
            Map.entry("density", " g/cm3"),
            Map.entry("age", " years"),
            Map.entry("current", " A"));

    private WrittenTask() {}

    static ObjectNode of(Task task, Vocabulary vocabulary) {
        ObjectNode told = JsonNodeFactory.instance.objectNode();
        told.put("title", task.title())
                .put("code", task.code())
                .put("on", task.on().toString());
        Map<String, ObjectNode> agents = new LinkedHashMap<>();
        for (Input input : task.inputs()) {
            if (input instanceof Answer answer) {
                put(told, answer.path(), answer.value());
            } else if (input instanceof Measure measure) {
                String kind =
                        vocabulary.question(measure.question()).orElseThrow().kind();
                if (kind.equals("day")
                        || kind.equals("duration") && measure.value().signum() == 0) {
                    // A day is no amount, and no time at all is an error of the file.
                    continue;
                }
                put(told, measure.path(), within(measure, task).toPlainString() + UNITS.getOrDefault(kind, ""));
            } else if (input instanceof Exposure exposure) {
                agent(agents, exposure.agent())
                        .put(
                                exposure.averaging().key(),
                                raised(exposure, task) + " " + exposure.unit().symbol());
            } else if (input instanceof Judged judged) {
                agent(agents, judged.agent())
                        .put("judged", "below-limit")
                        .put("because", judged.because())
                        .put("by", judged.by())
                        .put("basis", judged.basis())
                        .put("on", judged.day());
            }
        }
        agents.values().forEach(told.withArrayProperty("exposures")::add);
        return told;
    }

    /** No highest value is below an average of the same agent. */
    private static String raised(Exposure exposure, Task task) {
        return task.inputs().stream()
                .filter(i -> i instanceof Exposure e
                        && e.agent().equals(exposure.agent())
                        && e.unit() == exposure.unit()
                        && e.averaging().compareTo(exposure.averaging()) <= 0)
                .map(i -> ((Exposure) i).level())
                .max(BigDecimal::compareTo)
                .orElseThrow()
                .toPlainString();
    }

    /** No work is longer than its shift, and no time is none. */
    private static BigDecimal within(Measure measure, Task task) {
        return Set.of("time-on-task", "wear-time").contains(measure.question())
                ? task.inputs().stream()
                        .filter(i -> i instanceof Measure m && m.question().equals("shift"))
                        .map(i -> ((Measure) i).value().min(measure.value()))
                        .findFirst()
                        .orElse(measure.value())
                : measure.value();
    }

    private static ObjectNode agent(Map<String, ObjectNode> agents, String agent) {
        return agents.computeIfAbsent(
                agent, a -> JsonNodeFactory.instance.objectNode().put("agent", a));
    }

    private static void put(ObjectNode told, String path, String value) {
        String[] parts = path.split("\\.", 2);
        told.withObjectProperty(parts[0]).put(parts[1], value);
    }
}
