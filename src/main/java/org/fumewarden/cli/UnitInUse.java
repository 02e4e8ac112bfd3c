package org.fumewarden.cli;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.fumewarden.codes.InputException;
import org.fumewarden.codes.Located;
import org.fumewarden.codes.Nearest;
import org.fumewarden.codes.Problem;
import org.fumewarden.upkeep.Item;
import org.fumewarden.upkeep.Store;

/** What the register says of the unit that a task names: whether it is withdrawn, and its minimum design flow. */
final class UnitInUse {
    private UnitInUse() {}

    /**
     * The changes that the register makes to a task.
     *
     * @throws InputException when the task names a unit that the register does not hold
     */
    static Map<String, String> of(Located task, Path register) {
        Map<String, Located> kit = Optional.ofNullable(task.entries().get("kit"))
                .filter(Located::isMap)
                .map(Located::entries)
                .orElse(Map.of());
        Located named = kit.get("unit");
        if (named == null) {
            return Map.of();
        }
        try (Store store = Store.read(register)) {
            Item item = store.item(named.text()).orElseThrow(() -> unknown(named, store));
            Map<String, String> changes = new LinkedHashMap<>();
            boolean inService = store.state(item.id()).inService();
            changes.put("kit.unit-withdrawn", Boolean.toString(!inService));
            if (item instanceof Item.Unit unit
                    && kit.containsKey("measured-flow")
                    && !kit.containsKey("minimum-design-flow")) {
                unit.minimumFlow()
                        .ifPresent(flow -> changes.put("kit.minimum-design-flow", flow.toPlainString() + " L/min"));
            }
            return changes;
        }
    }

    private static InputException unknown(Located named, Store store) {
        return new InputException(new Problem(
                "task",
                named.line(),
                named.path(),
                "names a unit that the register does not hold: \"" + Located.shown(named.text()) + "\".",
                Nearest.maybe(
                        named.text(),
                        store.items().stream()
                                .filter(Item.Unit.class::isInstance)
                                .map(Item::id)
                                .toList())));
    }
}
