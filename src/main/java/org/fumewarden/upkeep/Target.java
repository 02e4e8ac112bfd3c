package org.fumewarden.upkeep;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.fumewarden.model.Duty;
import org.fumewarden.model.Subject;

/**
 * One thing to which duties may apply.
 *
 * @param item whose log discharges the duty
 * @param mask the mask of a pair of wearer and mask
 * @param facts of the site, of the item and of the mask; the nearer one wins
 */
record Target(Subject subject, Item item, Optional<Item.Mask> mask, Map<String, List<String>> facts) {

    /** The item itself, and a pair for each mask when it is a wearer. */
    static List<Target> of(Item item, Map<String, Item.Mask> masks, Map<String, List<String>> site) {
        List<Target> targets = new ArrayList<>();
        targets.add(
                new Target(Subject.valueOf(item.kind().name()), item, Optional.empty(), nearer(site, present(item))));
        if (item instanceof Item.Wearer wearer) {
            for (String id : wearer.masks()) {
                Optional<Item.Mask> mask = Optional.ofNullable(masks.get(id));
                mask.ifPresent(m -> targets.add(
                        new Target(Subject.WEARER_MASK, item, mask, nearer(nearer(site, item.facts()), m.facts()))));
            }
        }
        return targets;
    }

    /** A plant of the register is there, whatever else is known of it. */
    private static Map<String, List<String>> present(Item item) {
        return item.kind() == ItemKind.PLANT
                ? nearer(Map.of("lev-present", List.of("true")), item.facts())
                : item.facts();
    }

    private static Map<String, List<String>> nearer(Map<String, List<String>> far, Map<String, List<String>> near) {
        Map<String, List<String>> all = new TreeMap<>(far);
        all.putAll(near);
        return all;
    }

    /** What an entry of the log must serve to discharge the duty for this target. */
    String serves(Duty duty) {
        return duty.doneBy().equals("fit-test") && mask.isPresent()
                ? FitTest.servesFor(mask.get().model())
                : duty.doneBy();
    }

    String label() {
        return item.label() + mask.map(m -> ", " + m.id() + " " + m.label()).orElse("");
    }
}
