package org.fumewarden.register;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.fumewarden.codes.Located;
import org.fumewarden.model.Duty;
import org.fumewarden.model.Measure;
import org.fumewarden.task.RegisterNote;
import org.fumewarden.task.Task;
import org.fumewarden.upkeep.Item;
import org.fumewarden.upkeep.ItemKind;
import org.fumewarden.upkeep.LastFlow;
import org.fumewarden.upkeep.LateExamination;
import org.fumewarden.upkeep.Store;
import org.fumewarden.upkeep.UnitState;

/**
 * What the register says of the unit that a task names: whether it is withdrawn or overdue, whether it has a blower, and its
 * flows. Of the register and the file the stricter holds.
 */
final class UnitInUse {
    private static final String MEASURED = "measured-flow";
    private static final String MINIMUM = "minimum-design-flow";

    private final Item.Unit unit;
    private final Map<String, Located> kit;
    private final Map<String, String> changes = new LinkedHashMap<>();
    private final List<RegisterNote> notes = new ArrayList<>();

    private UnitInUse(Item.Unit unit, Map<String, Located> kit) {
        this.unit = unit;
        this.kit = kit;
    }

    /**
     * The changes that the register makes to a task.
     *
     * @param read the same task, with its amounts
     * @param duties say when an examination is due
     * @throws org.fumewarden.codes.InputException when the task names a unit that the register does not hold
     */
    static InUse.Found of(Located task, Task read, Store store, List<Duty> duties) {
        Map<String, Located> kit = InUse.answers(task, "kit");
        Optional<Located> named = InUse.named(kit, "unit");
        if (named.isEmpty()) {
            return new InUse.Found(Map.of(), List.of());
        }
        Item.Unit unit = InUse.item(named.get(), store, ItemKind.UNIT, Item.Unit.class);
        UnitInUse found = new UnitInUse(unit, kit);
        UnitState state = store.state(unit.id());
        found.withdrawn(state);
        if (state.inService()) {
            found.examined(LateExamination.of(store, duties, unit.id(), read.on()));
        }
        found.blower();
        if (state.standing() != UnitState.Standing.UNPROVEN) {
            found.flows(LastFlow.of(store, unit.id(), read.on()), minimum(read));
        }
        return new InUse.Found(found.changes, found.notes);
    }

    private static Optional<BigDecimal> minimum(Task read) {
        return read.inputs().stream()
                .filter(i -> i instanceof Measure m && m.question().equals(MINIMUM))
                .map(i -> ((Measure) i).value())
                .findFirst();
    }

    private void withdrawn(UnitState state) {
        settle(
                "unit-withdrawn",
                !state.inService(),
                state.inService() ? unit.id() + " is in use." : InUse.closed(unit.id(), state) + ".");
    }

    /** The due list decides; where it cannot say, the file answers or the question stays open. */
    private void examined(LateExamination examination) {
        if (examination.late().isPresent()) {
            settle(
                    "examination-overdue",
                    true,
                    "The log says of " + unit.id() + ": " + examination.late().get());
        } else if (examination.lacking().isEmpty()) {
            settle(
                    "examination-overdue",
                    false,
                    "No examination of " + unit.id() + " is overdue"
                            + examination
                                    .due()
                                    .map(d -> "; the next is due on " + d)
                                    .orElse("") + ".");
        } else {
            notes.add(new RegisterNote(
                    "kit.examination-overdue",
                    "The log on " + unit.id() + ": " + examination.against().orElseThrow()));
        }
    }

    private void blower() {
        List<String> delivery = unit.facts().getOrDefault("air-delivery", List.of());
        if (!delivery.isEmpty() && !delivery.contains("powered") && !kit.containsKey("blower")) {
            changes.put("kit.blower", "false");
            notes.add(new RegisterNote("kit.blower", unit.id() + " is registered as a set without a blower."));
        }
    }

    /** What the file measured on the day counts; else what the log last has, which is measured again before use. */
    private void flows(Optional<LastFlow> last, Optional<BigDecimal> given) {
        Optional<BigDecimal> registered = Stream.concat(
                        unit.minimumFlow().stream(), last.flatMap(LastFlow::minimum).stream())
                .max(Comparator.naturalOrder());
        registered.filter(r -> given.map(g -> g.compareTo(r) < 0).orElse(true)).ifPresent(flow -> {
            changes.put("kit." + MINIMUM, flow.toPlainString() + " L/min");
            notes.add(new RegisterNote(
                    "kit." + MINIMUM,
                    given.map(g -> "The file says a minimum flow of " + g.toPlainString()
                                            + " L/min, which is less; the stricter is taken. ")
                                    .orElse("")
                            + "The manufacturer's minimum flow of " + unit.id() + " is registered as "
                            + flow.toPlainString()
                            + " L/min."));
        });
        last.filter(f -> InUse.named(kit, MEASURED).isEmpty()).ifPresent(f -> {
            changes.put("kit." + MEASURED, f.flow().toPlainString() + " L/min");
            changes.put("kit.flow-of-earlier-day", "true");
            notes.add(new RegisterNote(
                    "kit." + MEASURED,
                    "The flow of " + unit.id() + " was last measured on " + f.on() + " (entry " + f.entry() + "): "
                            + f.flow().toPlainString() + " L/min. Measure it again before use."));
        });
    }

    /** A file that says something stricter of the unit than the register keeps its word. */
    private void settle(String question, boolean register, String because) {
        boolean stricter = Optional.ofNullable(kit.get(question))
                .map(Located::text)
                .filter("true"::equals)
                .isPresent();
        if (stricter && !register) {
            notes.add(new RegisterNote(
                    "kit." + question,
                    "The file says worse of " + unit.id() + " than the register; the stricter is taken. " + because));
            return;
        }
        changes.put("kit." + question, Boolean.toString(register));
        notes.add(new RegisterNote("kit." + question, because));
    }
}
