package org.fumewarden.check.oracle;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.fumewarden.advice.Advice;
import org.fumewarden.advice.Respirator;
import org.fumewarden.model.Agent;
import org.fumewarden.model.Answer;
import org.fumewarden.model.DeviceClass;
import org.fumewarden.model.Emitter;
import org.fumewarden.model.Exposure;
import org.fumewarden.model.Input;
import org.fumewarden.model.Judged;
import org.fumewarden.model.Measure;
import org.fumewarden.model.Threshold;
import org.fumewarden.model.Unit;
import org.fumewarden.model.Unknown;
import org.fumewarden.task.Task;

/** A task and the tables of its code: what was said, and what puts which agent into the air. */
record Case(Tables tables, Task task) {

    /** A class that an advice offers. */
    record Offered(DeviceClass device, Respirator respirator) {
        String id() {
            return device.id();
        }

        /** Full facepiece under positive pressure, self-contained or with air of its own to escape: 1910.134(d)(2)(i). */
        boolean forImmediateDanger() {
            return device.pressure().equals("positive")
                    && device.covers().equals("face")
                    && device.seal().equals("tight")
                    && device.escape().equals("auxiliary");
        }
    }

    <T> List<T> said(Class<T> type) {
        return task.inputs().stream().filter(type::isInstance).map(type::cast).toList();
    }

    Optional<String> answer(String question) {
        return said(Answer.class).stream()
                .filter(a -> a.question().equals(question))
                .map(Answer::value)
                .findFirst();
    }

    boolean is(String question, String... values) {
        return answer(question).filter(Set.of(values)::contains).isPresent();
    }

    Optional<BigDecimal> measure(String question) {
        return said(Measure.class).stream()
                .filter(m -> m.question().equals(question))
                .map(Measure::value)
                .findFirst();
    }

    Optional<BigDecimal> number(String threshold) {
        return tables.all(Threshold.class).stream()
                .filter(t -> t.id().equals(threshold))
                .map(Threshold::value)
                .findFirst();
    }

    boolean in(String set, String item) {
        return tables.in(set, item);
    }

    /** True when the process of the task is known and in the set. */
    boolean processIn(String set) {
        return answer("process").filter(p -> in(set, p)).isPresent();
    }

    Agent agent(String id) {
        return tables.all(Agent.class).stream()
                .filter(a -> a.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    boolean gas(String agent) {
        return agent(agent).form().equals("gas");
    }

    BigDecimal in(Unit unit, Exposure exposure) {
        if (exposure.unit() == unit) {
            return exposure.level();
        }
        BigDecimal mass = agent(exposure.agent()).molarMass().orElseThrow();
        BigDecimal volume = number("molar-volume").orElseThrow();
        return unit == Unit.PPM
                ? exposure.level().multiply(volume).divide(mass, MathContext.DECIMAL64)
                : exposure.level().multiply(mass).divide(volume, MathContext.DECIMAL64);
    }

    /** Agents that must be known: listed, or principal in what the process, metal, coating and filler give off. */
    Set<String> principalAgents() {
        Set<String> agents = new TreeSet<>();
        for (Input input : task.inputs()) {
            if (input instanceof Exposure exposure) {
                agents.add(exposure.agent());
            } else if (input instanceof Judged judged) {
                agents.add(judged.agent());
            } else if (input instanceof Unknown unknown && unknown.question().startsWith("exposures.")) {
                agents.add(unknown.question().split("\\.")[1]);
            }
        }
        tables.all(Emitter.class).stream()
                .filter(e -> e.rank().equals("principal"))
                .filter(e -> is(e.question(), e.value()) && processIn(e.processes()))
                .forEach(e -> agents.add(e.agent()));
        return agents;
    }

    /** The classes that the advice calls suitable or recommends. */
    List<Offered> offered(Advice advice) {
        return tables.all(DeviceClass.class).stream()
                .flatMap(d -> advice.respirators().stream()
                        .filter(r -> r.deviceClass().equals(d.id()))
                        .filter(r -> r.verdict().offered())
                        .map(r -> new Offered(d, r)))
                .toList();
    }
}
