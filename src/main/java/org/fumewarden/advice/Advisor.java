package org.fumewarden.advice;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
import org.fumewarden.assessment.Assessment;
import org.fumewarden.assessment.Assessor;
import org.fumewarden.assessment.ExposureTables;
import org.fumewarden.codes.InputException;
import org.fumewarden.codes.Problem;
import org.fumewarden.codes.RuleFolder;
import org.fumewarden.engine.Engine;
import org.fumewarden.engine.RuleBase;
import org.fumewarden.model.Agent;
import org.fumewarden.model.Exposure;
import org.fumewarden.model.Input;
import org.fumewarden.model.NoneListed;
import org.fumewarden.model.Row;
import org.fumewarden.model.Unit;
import org.fumewarden.shift.UnitFacts;
import org.fumewarden.task.Task;
import org.fumewarden.trail.Trail;

/**
 * Gives advice on tasks: the way in for a library. Safe for use by many threads at once without a lock of the caller: what
 * it keeps between tasks never shows in the advice, so the same task always gets the same advice. Make one for each code and keep
 * it, since the rules behind it take longest to load. What it advises defers to local codes and a competent person, as the advice says.
 */
public final class Advisor {
    private static final int DAYS_KEPT = 25;
    private static final Map<String, Advisor> SHIPPED = new ConcurrentHashMap<>();

    private final RuleBase base;
    private final Set<String> silent;
    private final Engine engine;
    private final Map<LocalDate, ExposureTables> days = new ConcurrentHashMap<>();
    private final Map<String, Advisor> speaking = new ConcurrentHashMap<>();

    /** An advisor with all rules of a code; advisors may share the rule base. */
    public Advisor(RuleBase base) {
        this(base, Set.of());
    }

    /** An advisor in which some rules are silent, for proving that each of them matters. */
    public Advisor(RuleBase base, Set<String> switchedOff) {
        this.base = base;
        this.silent = switchedOff;
        this.engine = new Engine(base, switchedOff);
    }

    /** The advisor of a code on the rules that ship with the program, made once. */
    public static Advisor shipped(String code) {
        return SHIPPED.computeIfAbsent(code, id -> new Advisor(RuleBase.shipped(id)));
    }

    /** The same advisor in another language, made once for it; itself when that has no names of its own. */
    public Advisor speaking(String language, Map<String, String> names) {
        return names.isEmpty()
                ? this
                : speaking.computeIfAbsent(
                        language, l -> new Advisor(base.speaking(base.book().tongue(l), names), silent));
    }

    /** The rules and tables that decide; its vocabulary is what a task is read with. */
    public RuleBase base() {
        return base;
    }

    /**
     * Decides a task.
     *
     * @throws InputException when a level has a unit that its limits cannot be compared with
     */
    public Advice advise(Task task) {
        RuleBase then = base.on(task.on());
        if (!then.equals(base)) {
            return new Advisor(then, silent).advise(task);
        }
        held(task, figures(task.on()));
        return advise(task, figures(task.on()), assess(task), this::decide, true);
    }

    private Trail decide(Task whole) {
        return engine.decide(whole.inputs(), whole.on());
    }

    /** What is decided on the task as it was given. */
    private Trail afresh(Task task) {
        return decide(whole(task, figures(task.on()), assess(task)));
    }

    private Task whole(Task task, ExposureTables figures, List<Assessment> assessed) {
        Assessor assessor = new Assessor(task, figures);
        List<Input> more = new ArrayList<>(
                assessed.stream().flatMap(a -> a.inputs().stream()).toList());
        more.add(assessor.breath());
        assessor.expired().ifPresent(more::add);
        more.addAll(UnitFacts.of(task, figures::every));
        assessor.marked().ifPresent(more::add);
        return assessor.counted().with(more);
    }

    /**
     * @param dated true to say until when it holds, which what is only compared need not
     */
    private Advice advise(
            Task task, ExposureTables figures, List<Assessment> assessed, Function<Task, Trail> decide, boolean dated) {
        Task whole = whole(task, figures, assessed);
        comparable(whole, figures);
        Trail trail = decide.apply(whole);
        WithOther other = new WithOther() {
            @Override
            public Upshot upshot(Row row, Optional<Row> instead) {
                return Advisor.this.upshot(task, assessed, row, instead);
            }

            @Override
            public Optional<Upshot> program() {
                return byProgram(task);
            }
        };
        Optional<LocalDate> last =
                dated ? new LastDay(base, task, whole, trail, this::afresh).find() : Optional.empty();
        return new AdviceWriter(base, whole, figures, assessed, trail, other, last).write();
    }

    /** The outcome on the same task if a row held something else, or were not there. */
    Upshot upshot(Task task, List<Assessment> assessed, Row row, Optional<Row> instead) {
        ExposureTables figures = new ExposureTables(row.replacedIn(base.rowsOn(task.on()), instead));
        List<Assessment> then = Assessor.restsOn(row, task) ? new Assessor(task, figures).assess() : assessed;
        return Upshot.of(
                advise(task, figures, then, whole -> engine.decide(whole.inputs(), whole.on(), row, instead), false));
    }

    private Optional<Upshot> byProgram(Task task) {
        String code = base.book().card().id();
        if (!RuleFolder.shipped().codes().contains(code)) {
            return Optional.empty();
        }
        try {
            return Optional.of(Upshot.of(Advisor.shipped(code).advise(task)));
        } catch (InputException e) {
            return Optional.empty();
        }
    }

    private ExposureTables figures(LocalDate day) {
        if (days.size() > DAYS_KEPT) {
            days.clear();
        }
        return days.computeIfAbsent(day, d -> new ExposureTables(base.rowsOn(d)));
    }

    /** What the readings of a task came to, before any rule sees them. */
    public List<Assessment> assess(Task task) {
        return new Assessor(task, figures(task.on())).assess();
    }

    /** Nothing is advised with the factors of today for a day before any that are held, whatever limits are stated. */
    private static void held(Task task, ExposureTables figures) {
        List<Problem> problems = figures.all(NoneListed.class)
                .filter(none -> none.list().equals(NoneListed.NO_FACTORS))
                .limit(1)
                .map(none -> new Problem(
                        task.file(),
                        task.lines().getOrDefault("on", 0),
                        "on",
                        "is " + task.on() + ", before any list that is held for " + task.code() + " (" + none.searched()
                                + ").",
                        "give a later day, or have a competent person judge it by the lists of that day."))
                .toList();
        if (!problems.isEmpty()) {
            throw new InputException(problems);
        }
    }

    /** A particle in ppm means nothing: say so before any rule sees it. */
    private static void comparable(Task task, ExposureTables figures) {
        List<Problem> problems = new ArrayList<>();
        for (Input input : task.inputs()) {
            if (input instanceof Exposure exposure
                    && !unitsAgree(exposure, figures)
                    && !convertible(exposure, figures)) {
                problems.add(new Problem(
                        task.file(),
                        task.lines().getOrDefault(exposure.path(), 0),
                        exposure.path(),
                        "is in " + exposure.unit().symbol() + ", which cannot be compared with the limits of "
                                + exposure.agent() + ".",
                        "give it in " + (exposure.unit() == Unit.PPM ? "mg/m3" : "ppm") + "."));
            }
        }
        if (!problems.isEmpty()) {
            throw new InputException(problems);
        }
    }

    private static boolean unitsAgree(Exposure exposure, ExposureTables figures) {
        return Set.of(exposure.unit()).containsAll(figures.units(exposure.agent()));
    }

    private static boolean convertible(Exposure exposure, ExposureTables figures) {
        return figures.all(Agent.class)
                .anyMatch(a -> a.id().equals(exposure.agent()) && a.molarMass().isPresent());
    }
}
