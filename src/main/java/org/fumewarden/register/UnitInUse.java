package org.fumewarden.register;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.fumewarden.codes.Located;
import org.fumewarden.task.RegisterNote;
import org.fumewarden.upkeep.Item;
import org.fumewarden.upkeep.ItemKind;
import org.fumewarden.upkeep.Store;
import org.fumewarden.upkeep.UnitState;

/** What the register says of the unit that a task names: whether it is withdrawn, and its minimum design flow. */
final class UnitInUse {
    private UnitInUse() {}

    /**
     * The changes that the register makes to a task.
     *
     * @throws org.fumewarden.codes.InputException when the task names a unit that the register does not hold
     */
    static InUse.Found of(Located task, Store store) {
        Map<String, Located> kit = InUse.answers(task, "kit");
        Optional<Located> named = InUse.named(kit, "unit");
        if (named.isEmpty()) {
            return new InUse.Found(Map.of(), List.of());
        }
        Item.Unit unit = InUse.item(named.get(), store, ItemKind.UNIT, Item.Unit.class);
        Map<String, String> changes = new LinkedHashMap<>();
        List<RegisterNote> notes = new ArrayList<>();
        withdrawn(unit, store.state(unit.id()), kit, changes, notes);
        if (kit.containsKey("measured-flow") && !kit.containsKey("minimum-design-flow")) {
            unit.minimumFlow().ifPresent(flow -> {
                changes.put("kit.minimum-design-flow", flow.toPlainString() + " L/min");
                notes.add(new RegisterNote(
                        "kit.minimum-design-flow",
                        "The maker's minimum flow of " + unit.id() + " is registered as " + flow.toPlainString()
                                + " L/min."));
            });
        }
        return new InUse.Found(changes, notes);
    }

    /** A file that withdraws the unit is stricter than a register that does not. */
    private static void withdrawn(
            Item.Unit unit,
            UnitState state,
            Map<String, Located> kit,
            Map<String, String> changes,
            List<RegisterNote> notes) {
        boolean stricter = Optional.ofNullable(kit.get("unit-withdrawn"))
                .map(Located::text)
                .filter(t -> t.equals("true"))
                .isPresent();
        if (state.inService() && stricter) {
            notes.add(new RegisterNote(
                    "kit.unit-withdrawn",
                    "The register has " + unit.id() + " in use, the file withdraws it; the stricter is taken."));
            return;
        }
        changes.put("kit.unit-withdrawn", Boolean.toString(!state.inService()));
        notes.add(new RegisterNote(
                "kit.unit-withdrawn",
                state.inService() ? unit.id() + " is in use." : InUse.closed(unit.id(), state) + "."));
    }
}
