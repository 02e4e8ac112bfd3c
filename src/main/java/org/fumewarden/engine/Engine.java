package org.fumewarden.engine;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.BiFunction;
import java.util.function.Function;
import org.fumewarden.model.Fact;
import org.fumewarden.model.Input;
import org.fumewarden.model.Kept;
import org.fumewarden.model.Row;
import org.fumewarden.trail.Trail;

/**
 * Decides a task phase by phase, each over the inputs, the rows in force and all earlier conclusions. One instance may
 * serve many threads.
 */
public final class Engine {
    private static final int DAYS_KEPT = 5;

    private final RuleBase base;
    private final Set<String> switchedOff;
    private final HeldFacts met = new HeldFacts();
    private volatile boolean begun;
    private final Kept<LocalDate, Map<Phase, PhaseRunner>> runners = new Kept<>(DAYS_KEPT);

    public Engine(RuleBase base) {
        this(base, Set.of());
    }

    /** An engine in which some rules are silent, for proving that each of them matters. */
    public Engine(RuleBase base, Set<String> switchedOff) {
        this.base = base;
        this.switchedOff = Set.copyOf(switchedOff);
    }

    /** Runs all phases and returns every step. */
    public Trail decide(List<Input> inputs, LocalDate day) {
        // A program that decides once needs nothing kept.
        boolean first = !begun;
        begun = true;
        boolean once = first || !switchedOff.isEmpty();
        Function<Fact, Held> held = first ? Held::once : met::of;
        DraftWriter drafts = new DraftWriter(base.sentences(), base.rows(day), held);
        return decide(inputs, held, (phase, facts) -> {
            PhaseRunner runner = runner(phase, day);
            return once ? runner.runOnce(facts, drafts) : runner.run(facts, drafts);
        });
    }

    /**
     * Runs all phases as if a row of that day held something else: what an answer would be with another value.
     *
     * @param instead the row in its place; none to leave the row out
     */
    public Trail decide(List<Input> inputs, LocalDate day, Row row, Optional<Row> instead) {
        DraftWriter drafts = new DraftWriter(base.sentences(), base.rows(day).with(row, instead), met::of);
        return decide(inputs, met::of, (phase, facts) -> {
            Readers read = base.rules(phase).read();
            boolean reads = read.some(row) || instead.filter(read::some).isPresent();
            PhaseRunner runner = runner(phase, day);
            return reads ? runner.runWith(facts, row, instead, drafts) : runner.run(facts, drafts);
        });
    }

    /** Phase by phase, each over all that was concluded before. */
    private Trail decide(
            List<Input> inputs, Function<Fact, Held> held, BiFunction<Phase, List<Held>, List<StepDraft>> concluded) {
        StepWriter steps = new StepWriter();
        List<Held> facts = new ArrayList<>(inputs.size() + StepWriter.EXPECTED);
        inputs.forEach(input -> facts.add(held.apply(input)));
        for (Phase phase : base.phases()) {
            facts.addAll(steps.add(concluded.apply(phase, facts)));
        }
        return new Trail(steps.steps());
    }

    private PhaseRunner runner(Phase phase, LocalDate day) {
        return runners.of(day, d -> new ConcurrentHashMap<>())
                .computeIfAbsent(phase, p -> new PhaseRunner(base.rules(phase), base.rows(day), day, switchedOff));
    }
}
