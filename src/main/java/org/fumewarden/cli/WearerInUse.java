package org.fumewarden.cli;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.fumewarden.codes.InputException;
import org.fumewarden.codes.Located;
import org.fumewarden.codes.Nearest;
import org.fumewarden.codes.Problem;
import org.fumewarden.upkeep.Details;
import org.fumewarden.upkeep.Duty;
import org.fumewarden.upkeep.Item;
import org.fumewarden.upkeep.Proof;
import org.fumewarden.upkeep.Store;

/**
 * What the register says of the wearer that a task names: fit tests, medical clearance, training.
 *
 * <p>Of the register and the file the stricter holds. A fit test counts when each mask of the wearer has one that stands.
 */
final class WearerInUse {
    /**
     * What the register changes.
     *
     * @param notes what a reader must know of it, a sentence each
     */
    record Found(Map<String, String> changes, List<String> notes) {}

    private static final String FIT = "fit-tested";
    private static final String MEDICAL = "medically-cleared";
    private static final String CLEARANCE = "medical/clearance";

    private final Store store;
    private final Item.Wearer wearer;
    private final List<Duty> duties;
    private final LocalDate day;
    private final Map<String, Located> answers;
    private final Map<String, String> changes = new LinkedHashMap<>();
    private final List<String> notes = new ArrayList<>();

    private WearerInUse(
            Store store, Item.Wearer wearer, List<Duty> duties, LocalDate day, Map<String, Located> answers) {
        this.store = store;
        this.wearer = wearer;
        this.duties = duties;
        this.day = day;
        this.answers = answers;
    }

    /**
     * The changes that the register makes to a task.
     *
     * @param code whose duties say when a test or clearance runs out
     * @throws InputException when the task names a wearer that the register does not hold
     */
    static Found of(Located task, Path register, String code, LocalDate day) {
        Map<String, Located> answers = Optional.ofNullable(task.entries().get("wearer"))
                .filter(Located::isMap)
                .map(Located::entries)
                .orElse(Map.of());
        Located named = answers.get("id");
        if (named == null) {
            return new Found(Map.of(), List.of());
        }
        try (Store store = Store.read(register)) {
            Item.Wearer wearer = store.item(named.text())
                    .filter(Item.Wearer.class::isInstance)
                    .map(Item.Wearer.class::cast)
                    .orElseThrow(() -> unknown(named, store));
            List<Duty> duties = StoreOption.duties(code, store, day).duties();
            return new WearerInUse(store, wearer, duties, day, answers).found();
        }
    }

    private Found found() {
        fit();
        medical();
        Proof trained = proof("training", "training", facts(Map.of()));
        if (!trained.stands()) {
            notes.add(wearer.id() + ": " + trained.because() + "; train before use.");
        }
        return new Found(changes, notes);
    }

    private void fit() {
        List<Item.Mask> masks = wearer.masks().stream()
                .flatMap(id -> store.item(id).stream())
                .filter(Item.Mask.class::isInstance)
                .map(Item.Mask.class::cast)
                .filter(m -> !m.facts().getOrDefault("face-seal", List.of()).equals(List.of("loose")))
                .toList();
        List<String> lacking = masks.stream()
                .map(m -> proof("fit-test/" + m.model().strip(), "fit-test", facts(m.facts())))
                .filter(p -> !p.stands())
                .map(Proof::because)
                .toList();
        if (masks.isEmpty()) {
            settle(FIT, "false", "the register names no tight mask of " + wearer.id() + ", so no fit test counts");
        } else if (lacking.isEmpty()) {
            settle(FIT, "true", "");
        } else {
            settle(FIT, "false", String.join("; ", lacking));
        }
    }

    /** Where the code orders no clearance and none is logged, the file alone answers. */
    private void medical() {
        Proof cleared = proof(CLEARANCE, CLEARANCE, facts(Map.of()));
        boolean ordered = duties.stream().anyMatch(d -> d.doneBy().equals(CLEARANCE) && !d.ruledOutBy(facts(Map.of())));
        if (cleared.entry().isEmpty() && !ordered) {
            return;
        }
        String limits = cleared.entry()
                .flatMap(store::entry)
                .flatMap(e -> e.effective())
                .filter(Details.Medical.class::isInstance)
                .map(d -> ((Details.Medical) d).limits())
                .orElse("");
        if (!cleared.stands()) {
            settle(MEDICAL, "false", cleared.because());
        } else if (limits.isEmpty()) {
            settle(MEDICAL, "true", "");
        } else if (limits.toLowerCase(Locale.ROOT).strip().replace('-', ' ').equals("powered only")) {
            settle(MEDICAL, "powered-only", "the clearance is limited: " + limits);
        } else if (!answered(MEDICAL).equals("powered-only")) {
            settle(
                    MEDICAL,
                    "false",
                    "the clearance has limits that only a person can judge (" + limits
                            + "); write \"powered only\" there if that is what they mean");
        }
    }

    /** Puts in what the register says unless the file says something stricter. */
    private void settle(String question, String register, String because) {
        String file = answered(question);
        boolean stricter = file.isEmpty() || rank(register) > rank(file);
        if (stricter) {
            changes.put("wearer." + question, register);
        }
        if (!because.isEmpty()) {
            notes.add("wearer." + question + ": "
                    + (file.isEmpty() || file.equals(register)
                            ? "from the register: "
                            : "the file says " + Located.shown(file) + ", the register " + register
                                    + "; the stricter is taken: ")
                    + because + ".");
        }
    }

    private static int rank(String answer) {
        return switch (answer) {
            case "false", "no" -> 2;
            case "powered-only" -> 1;
            default -> 0;
        };
    }

    private String answered(String question) {
        return Optional.ofNullable(answers.get(question)).map(Located::text).orElse("");
    }

    private Proof proof(String serves, String doneBy, Map<String, List<String>> facts) {
        List<Duty> asking =
                duties.stream().filter(d -> d.doneBy().equals(doneBy)).toList();
        return Proof.of(store, wearer.id(), serves, asking, facts, day);
    }

    /** A mask of which nobody said how it seals is taken as one that seals on the face. */
    private Map<String, List<String>> facts(Map<String, List<String>> nearest) {
        Map<String, List<String>> all = new TreeMap<>();
        store.items().stream().filter(Item.Site.class::isInstance).forEach(s -> all.putAll(s.facts()));
        all.putAll(wearer.facts());
        all.putAll(nearest);
        all.putIfAbsent("face-seal", List.of("tight"));
        return all;
    }

    private static InputException unknown(Located named, Store store) {
        return new InputException(new Problem(
                "task",
                named.line(),
                named.path(),
                "names a wearer that the register does not hold: \"" + Located.shown(named.text()) + "\".",
                Nearest.maybe(
                        named.text(),
                        store.items().stream()
                                .filter(Item.Wearer.class::isInstance)
                                .map(Item::id)
                                .toList())));
    }
}
