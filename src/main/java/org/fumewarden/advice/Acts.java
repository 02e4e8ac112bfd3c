package org.fumewarden.advice;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.fumewarden.model.Act;
import org.fumewarden.model.Answer;
import org.fumewarden.model.DeviceClass;
import org.fumewarden.model.Gate;
import org.fumewarden.model.OpenNeed;
import org.fumewarden.model.Row;
import org.fumewarden.trail.Step;
import org.fumewarden.trail.Trail;

/** The short sentences of the page that is read, for what the rules concluded about this task. */
public final class Acts {
    private Acts() {}

    /**
     * The sentences of a part, in the order of their table, each once: for what the rules concluded, what is worn, and where the
     * work is done.
     *
     * @param rows those in force on the day
     */
    public static List<Act> of(String part, Advice advice, List<Row> rows) {
        Set<String> keys = new HashSet<>(Worn.keys(advice, rows));
        advice.trail().steps().stream()
                .filter(Step::stands)
                .map(s -> restsOnUnknown(s, advice.trail()) ? "gate:open" : Act.key(s.conclusion()))
                .forEach(keys::add);
        advice.inputs().stream()
                .filter(Answer.class::isInstance)
                .map(i -> "answer:" + ((Answer) i).question() + "=" + ((Answer) i).value())
                .forEach(keys::add);
        List<DeviceClass> classes = rows.stream()
                .filter(DeviceClass.class::isInstance)
                .map(DeviceClass.class::cast)
                .toList();
        advice.unit()
                .filter(u -> u.barred() && UnitWriter.elsewhere(advice.trail(), classes, u.deviceClass()))
                .ifPresent(u -> keys.addAll(Set.of("unit:another-unit", Worn.BARRED)));
        keys.add(namesAClass(advice) ? "wear:named" : "wear:nothing-named");
        Set<String> said = new HashSet<>();
        return rows.stream()
                .filter(r -> r instanceof Act act && act.part().equals(part))
                .map(Act.class::cast)
                .filter(act -> act.calledForBy(keys) && said.add(act.says()))
                .toList();
    }

    /** True where the page says which class to wear; an order that points there needs it. */
    private static boolean namesAClass(Advice advice) {
        return advice.recommended().isPresent()
                && !Set.of(Status.DO_NOT_ENTER, Status.CONFLICT).contains(advice.status());
    }

    /** True for a gate that a measurement may open: nothing is found wrong with the air. */
    private static boolean restsOnUnknown(Step step, Trail trail) {
        return step.conclusion() instanceof Gate
                && step.premises().stream()
                        .flatMap(p -> trail.step(p.address()).stream())
                        .anyMatch(s -> s.conclusion() instanceof OpenNeed);
    }
}
