package org.fumewarden.register;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.fumewarden.codes.Located;
import org.fumewarden.task.RegisterNote;
import org.fumewarden.upkeep.DueReport;
import org.fumewarden.upkeep.Duty;
import org.fumewarden.upkeep.Item;
import org.fumewarden.upkeep.ItemKind;
import org.fumewarden.upkeep.LateExamination;
import org.fumewarden.upkeep.Store;
import org.fumewarden.upkeep.UnitState;

/**
 * What the register says of the unit that a task names: whether it is withdrawn or overdue, whether it has a blower, and its
 * minimum design flow. Of the register and the file the stricter holds.
 */
final class UnitInUse {
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
     * @param duties say when an examination is due
     * @throws org.fumewarden.codes.InputException when the task names a unit that the register does not hold
     */
    static InUse.Found of(Located task, Store store, List<Duty> duties, LocalDate day) {
        Map<String, Located> kit = InUse.answers(task, "kit");
        Optional<Located> named = InUse.named(kit, "unit");
        if (named.isEmpty()) {
            return new InUse.Found(Map.of(), List.of());
        }
        Item.Unit unit = InUse.item(named.get(), store, ItemKind.UNIT, Item.Unit.class);
        UnitInUse found = new UnitInUse(unit, kit);
        found.withdrawn(store.state(unit.id()));
        found.examined(LateExamination.report(store, duties, unit.id(), day), duties);
        found.blower();
        found.minimumFlow();
        return new InUse.Found(found.changes, found.notes);
    }

    private void withdrawn(UnitState state) {
        settle(
                "unit-withdrawn",
                !state.inService(),
                state.inService() ? unit.id() + " is in use." : InUse.closed(unit.id(), state) + ".");
    }

    /** The due list decides; where it cannot say, the file answers or the question stays open. */
    private void examined(DueReport report, List<Duty> duties) {
        Optional<String> late = LateExamination.words(report);
        boolean unsettled = report.unsettled().stream()
                .flatMap(u -> u.duties().stream())
                .anyMatch(id -> duties.stream()
                        .anyMatch(d -> d.id().equals(id) && d.doneBy().equals(LateExamination.EXAMINATION)));
        if (late.isPresent()) {
            settle("examination-overdue", true, "Of " + unit.id() + " the log says: " + late.get() + ".");
        } else if (unsettled) {
            notes.add(new RegisterNote(
                    "kit.examination-overdue",
                    "The register lacks a fact of " + unit.id()
                            + " on which its examination hangs; see the due list."));
        } else {
            settle("examination-overdue", false, "No examination of " + unit.id() + " is overdue.");
        }
    }

    private void blower() {
        List<String> delivery = unit.facts().getOrDefault("air-delivery", List.of());
        if (!delivery.isEmpty() && !delivery.contains("powered") && !kit.containsKey("blower")) {
            changes.put("kit.blower", "false");
            notes.add(new RegisterNote("kit.blower", unit.id() + " is registered as a set without a blower."));
        }
    }

    private void minimumFlow() {
        if (kit.containsKey("measured-flow") && !kit.containsKey("minimum-design-flow")) {
            unit.minimumFlow().ifPresent(flow -> {
                changes.put("kit.minimum-design-flow", flow.toPlainString() + " L/min");
                notes.add(new RegisterNote(
                        "kit.minimum-design-flow",
                        "The maker's minimum flow of " + unit.id() + " is registered as " + flow.toPlainString()
                                + " L/min."));
            });
        }
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
