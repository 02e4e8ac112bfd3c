package org.fumewarden.register;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.apache.commons.lang3.StringUtils;
import org.fumewarden.codes.Located;
import org.fumewarden.model.Duty;
import org.fumewarden.task.RegisterNote;
import org.fumewarden.upkeep.Details;
import org.fumewarden.upkeep.Item;
import org.fumewarden.upkeep.ItemKind;
import org.fumewarden.upkeep.Proof;
import org.fumewarden.upkeep.Store;
import org.fumewarden.upkeep.UnitState;

/**
 * What the register says of the wearer that a task names: fit tests, medical clearance, training.
 *
 * <p>Of the register and the file the stricter holds. When the task names the mask that is worn, the fit test in its model
 * counts; when it does not, each tight mask of the wearer must have one that stands.
 */
final class WearerInUse {
    private static final String FIT = "fit-tested";
    private static final String MEDICAL = "medically-cleared";
    private static final String TRAINED = "trained";
    private static final String CLEARANCE = "medical/clearance";

    private final Store store;
    private final Item.Wearer wearer;
    private final List<Duty> duties;
    private final LocalDate day;
    private final Map<String, Located> answers;
    private final Map<String, String> changes = new LinkedHashMap<>();
    private final List<RegisterNote> notes = new ArrayList<>();

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
     * @param duties say when a test or clearance runs out
     * @throws org.fumewarden.codes.InputException when the task names a wearer or mask that the register does not hold
     */
    static InUse.Found of(Located task, Store store, List<Duty> duties, LocalDate day) {
        Map<String, Located> answers = InUse.answers(task, "wearer");
        Optional<Located> named = InUse.named(answers, "id");
        Optional<Located> worn = InUse.named(InUse.answers(task, "kit"), "mask");
        if (named.isEmpty() && worn.isEmpty()) {
            return new InUse.Found(Map.of(), List.of());
        }
        Optional<Item.Mask> mask = worn.map(w -> InUse.item(w, store, ItemKind.MASK, Item.Mask.class));
        if (named.isEmpty()) {
            return closedMask(mask.orElseThrow(), store);
        }
        Item.Wearer wearer = InUse.item(named.get(), store, ItemKind.WEARER, Item.Wearer.class);
        return new WearerInUse(store, wearer, duties, day, answers).found(mask);
    }

    /** Without a wearer nothing is known of fit tests, but a mask that is out of use is worn by nobody. */
    private static InUse.Found closedMask(Item.Mask mask, Store store) {
        UnitState state = store.state(mask.id());
        return state.inService()
                ? new InUse.Found(Map.of(), List.of())
                : new InUse.Found(
                        Map.of("wearer." + FIT, "false"),
                        List.of(new RegisterNote(
                                "wearer." + FIT, InUse.closed(mask.id(), state) + "; no fit test in it counts.")));
    }

    private InUse.Found found(Optional<Item.Mask> worn) {
        fit(worn);
        medical();
        trained();
        return new InUse.Found(changes, notes);
    }

    private void fit(Optional<Item.Mask> worn) {
        if (worn.filter(WearerInUse::tight).isPresent()) {
            worn(worn.get());
            return;
        }
        worn.ifPresent(m -> notes.add(new RegisterNote(
                "kit.mask",
                m.id() + " is registered as loose; tight masks are judged by those of " + wearer.id() + ".")));
        List<Item.Mask> masks = wearer.masks().stream()
                .flatMap(id -> store.item(id).stream())
                .filter(Item.Mask.class::isInstance)
                .map(Item.Mask.class::cast)
                .filter(WearerInUse::tight)
                .toList();
        List<Proof> proofs = masks.stream().map(this::fitTest).toList();
        List<String> lacking =
                proofs.stream().filter(p -> !p.stands()).map(Proof::because).toList();
        if (masks.isEmpty()) {
            settle(FIT, "false", "the register names no tight mask of " + wearer.id() + ", so no fit test counts");
        } else if (lacking.isEmpty()) {
            settle(FIT, "true", words(proofs));
        } else {
            String which = masks.size() > 1 && worn.isEmpty()
                    ? "; of " + masks.size() + " tight masks kit.mask does not say which is worn"
                    : "";
            settle(FIT, "false", String.join("; ", lacking) + which);
        }
    }

    private void worn(Item.Mask mask) {
        UnitState state = store.state(mask.id());
        Proof proof = fitTest(mask);
        String whose = wearer.masks().contains(mask.id())
                ? ""
                : "; " + mask.id() + " is not among the registered masks of " + wearer.id();
        if (!state.inService()) {
            settle(FIT, "false", InUse.closed(mask.id(), state) + "; no fit test in it counts");
        } else {
            settle(FIT, Boolean.toString(proof.stands()), proof.because() + whose);
        }
    }

    private Proof fitTest(Item.Mask mask) {
        UnitState state = store.state(mask.id());
        return state.standing() == UnitState.Standing.UNPROVEN
                ? new Proof(false, state.entry(), InUse.closed(mask.id(), state))
                : proof("fit-test/" + mask.model().strip(), "fit-test", facts(mask.facts()));
    }

    private static boolean tight(Item.Mask mask) {
        return !mask.facts().getOrDefault("face-seal", List.of()).equals(List.of("loose"));
    }

    private static String words(List<Proof> proofs) {
        return proofs.stream().map(Proof::because).distinct().collect(Collectors.joining("; "));
    }

    /** Where the code orders no training and none is logged, the file alone answers. */
    private void trained() {
        Proof proof = proof("training", "training", facts(Map.of()));
        boolean ordered =
                duties.stream().anyMatch(d -> d.doneBy().equals("training") && !d.ruledOutBy(facts(Map.of())));
        if (proof.entry().isPresent() || ordered) {
            settle(TRAINED, Boolean.toString(proof.stands()), proof.because());
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
            settle(MEDICAL, "true", cleared.because());
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
        String taken = file.isEmpty() || file.equals(register)
                ? ""
                : "The task says " + word(file) + ", the register "
                        + (register.equals("false")
                                ? "shows no valid record: counts as no."
                                : "says " + word(register) + ": the stricter counts.");
        String said = "Wearer " + wearer.id() + ": " + StringUtils.removeEnd(because, ".") + ".";
        notes.add(new RegisterNote("wearer." + question, (said + " " + taken).strip()));
    }

    private static String word(String answer) {
        return switch (answer) {
            case "true" -> "yes";
            case "false" -> "no";
            default -> Located.shown(answer);
        };
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
        store.items(Item.Site.class).forEach(s -> all.putAll(s.facts()));
        all.putAll(wearer.facts());
        all.putAll(nearest);
        all.putIfAbsent("face-seal", List.of("tight"));
        return all;
    }
}
