package org.fumewarden.check.oracle;

import java.util.List;
import java.util.Set;
import org.fumewarden.advice.Advice;
import org.fumewarden.task.Task;

/**
 * A second statement of what an advice must hold to, straight from the tables and the law and without the engine. It says the
 * least that must hold: engine and rules of a code may bar more, never less. Each family tells in its comment what it does not
 * know. None of them knows duties, cautions, the order of controls, words, the endurance of a shift, the register, spectacles,
 * movement, work rate, heat or the unit in hand. A number that is wrong in a table is wrong here too, but for the limits of
 * oxygen, which are typed a second time.
 */
public final class Oracle {
    private final Case facts;
    private final List<Family> families;

    public Oracle(Tables tables, Task task) {
        facts = new Case(tables, task);
        Levels levels = new Levels(facts);
        Floors floors = new Floors(facts, levels);
        families = List.of(
                levels,
                new Factors(facts, levels),
                new Gates(facts, levels),
                floors,
                new Filters(facts, levels, floors),
                new Accounts(facts, levels, floors),
                new Wearer(facts, levels, floors));
    }

    /** Agents that must be known before an advice is complete. */
    public Set<String> principalAgents() {
        return facts.principalAgents();
    }

    /** What the advice breaks; empty when nothing is known against it. */
    public List<String> objections(Advice advice) {
        return families.stream().flatMap(f -> f.objections(advice).stream()).toList();
    }
}
