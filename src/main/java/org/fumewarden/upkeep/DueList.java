package org.fumewarden.upkeep;

import java.time.LocalDate;
import java.time.Period;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.fumewarden.model.Anchor;
import org.fumewarden.model.Duty;
import org.fumewarden.model.Frequency;
import org.fumewarden.model.Subject;

/**
 * Computes what is owed.
 *
 * <p>Reads the current registration of each item and, by index, the last deed for each duty; never the whole log.
 */
public final class DueList {
    private static final int DOUBTS_SHOWN = 20;

    private final Store store;
    private final List<Duty> duties;
    private final LocalDate today;
    private final Period warning;
    private final Openings openings = new Openings();
    private final TreeSet<String> doubts = new TreeSet<>();
    private final boolean assuming;

    /**
     * A computation over a store.
     *
     * @param duties those of the code; conditions that they still carry are held against the facts of the register
     * @param warning how long before the due day a duty counts as due soon
     */
    public DueList(Store store, List<Duty> duties, LocalDate today, Period warning) {
        this(store, duties.stream().filter(DueList::listed).toList(), today, warning, false);
    }

    private DueList(Store store, List<Duty> duties, LocalDate today, Period warning, boolean assuming) {
        this.store = store;
        this.duties = duties;
        this.today = today;
        this.warning = warning;
        this.assuming = assuming;
    }

    /** Those that fall due on a day, and what a person must have had once before the first use. */
    private static boolean listed(Duty duty) {
        return duty.frequency().dated()
                || duty.frequency() == Frequency.ON_CHANGE && duty.anchor() == Anchor.EXPOSURE_START;
    }

    /** The same as if every duty applied of which the register does not say that it does not. */
    DueList assuming() {
        return new DueList(store, duties, today, warning, true);
    }

    /**
     * What is owed.
     *
     * @param siteFacts circumstances that hold for the whole site
     * @param until the last due day to list; overdue and undated ones are always listed
     */
    public DueReport compute(Map<String, List<String>> siteFacts, Optional<LocalDate> until) {
        return store.snapshot(() -> computed(siteFacts, until, item -> true));
    }

    /** What is owed by one item, with the facts of the registered sites. */
    public DueReport of(String id) {
        return store.snapshot(
                () -> computed(Map.of(), Optional.empty(), item -> item.id().equals(id)));
    }

    private DueReport computed(Map<String, List<String>> siteFacts, Optional<LocalDate> until, Predicate<Item> wanted) {
        List<Item> items = store.items();
        Map<String, Item.Mask> masks = items.stream()
                .filter(Item.Mask.class::isInstance)
                .map(Item.Mask.class::cast)
                .collect(Collectors.toMap(Item.Mask::id, m -> m));
        Map<String, List<String>> site = new TreeMap<>(siteFacts);
        items.stream().filter(i -> i.kind() == ItemKind.SITE).forEach(i -> i.facts()
                .forEach(site::putIfAbsent));
        List<Owing> owings = new ArrayList<>();
        List<Closed> closed = new ArrayList<>();
        for (Item item : items.stream().filter(wanted).toList()) {
            UnitState state = state(item);
            boolean known = store.changed(item.id()).isEmpty();
            if (known && (state.standing() == UnitState.Standing.SCRAPPED || left(item))) {
                continue;
            }
            if (!state.inService()) {
                closed.add(new Closed(item.id(), item.kind(), item.label(), state));
            }
            for (Target target : Target.of(item, masks, site)) {
                owings.addAll(owed(target, state));
            }
            if (item instanceof Item.Wearer wearer) {
                strangers(wearer, masks);
            }
        }
        List<Owing> listed = owings.stream()
                .filter(o -> until.isEmpty()
                        || o.due().map(d -> !d.isAfter(until.get())).orElse(true))
                .sorted(Owing.ORDER)
                .toList();
        doubts.addAll(Clocks.backwards(store.lately()));
        List<String> told = Stream.concat(
                        store.soundness().damages().stream()
                                .map(d -> d.text() + " Nothing that hangs on it is shown; run \"store verify\"."),
                        doubts.stream())
                .toList();
        return new DueReport(
                today,
                listed,
                closed,
                openings.list(),
                told.stream().limit(DOUBTS_SHOWN).toList(),
                store.origin());
    }

    /** A mask of a wearer that is not registered: nobody knows which fit test it needs, so the question stays open. */
    private void strangers(Item.Wearer wearer, Map<String, Item.Mask> masks) {
        wearer.masks().stream().filter(id -> !masks.containsKey(id)).forEach(id -> duties.stream()
                .filter(d -> d.appliesTo().contains(Subject.WEARER_MASK))
                .forEach(d -> openings.add(wearer.id(), Subject.WEARER_MASK, d, "mask " + id)));
    }

    private UnitState state(Item item) {
        return person(item) ? UnitState.open() : store.state(item.id());
    }

    private static boolean person(Item item) {
        return item.kind() == ItemKind.WEARER || item.kind() == ItemKind.SITE;
    }

    private boolean left(Item item) {
        return item.anchored(Anchor.EMPLOYMENT_END).map(d -> d.isBefore(today)).orElse(false);
    }

    private List<Owing> owed(Target target, UnitState state) {
        Map<String, Merge> visits = new LinkedHashMap<>();
        for (Duty duty : duties) {
            if (!duty.appliesTo().contains(target.subject())) {
                continue;
            }
            Applicability applicability = Applicability.of(duty, target.subject(), target.facts());
            if (!applicability.applies()) {
                continue;
            }
            if (!applicability.open().isEmpty() && !assuming) {
                // The first open fact is the gate: once it is known the others may not matter.
                openings.add(target, duty, applicability.open().get(0));
                continue;
            }
            String serves = target.serves(duty);
            visits.computeIfAbsent(serves, s -> merge(target, s)).add(duty, applicability.assumed());
        }
        return visits.values().stream()
                .map(m -> m.owing(today, warning, state))
                .flatMap(Optional::stream)
                .toList();
    }

    /** A person who failed after having passed no longer fits, is no longer cleared: the pass does not count. */
    private Merge merge(Target target, String serves) {
        String id = target.item().id();
        store.latest(id, serves)
                .filter(l -> l.on().isAfter(today))
                .ifPresent(l -> doubts.add("entry " + l.sequence() + ": " + id + ", " + serves.replace('/', ' ')
                        + ", is dated " + l.on() + ", after the day of this list. It is not counted."));
        Optional<String> changed = person(target.item())
                ? store.changed(id)
                        .or(() -> target.mask().flatMap(m -> store.changed(m.id())))
                        .map(Verification.Damage::text)
                : Optional.empty();
        if (changed.isPresent()) {
            return new Merge(target, serves, Optional.empty(), Optional.empty(), "not shown: " + changed.get(), "");
        }
        Optional<Latest> latest = store.latest(id, serves, today);
        Optional<Latest> failed =
                store.failed(id, serves, today).filter(f -> latest.map(f::after).orElse(true));
        String unjudged = store.unjudged(id, serves, today)
                .filter(o -> latest.map(o::after).orElse(true))
                .map(o -> "tested on " + o.on() + Proof.why(store, o))
                .orElse("");
        return failed.isPresent() && target.item().kind() == ItemKind.WEARER
                ? new Merge(
                        target,
                        serves,
                        Optional.empty(),
                        failed,
                        "failed on " + failed.get().on() + Proof.why(store, failed.get()),
                        "")
                : new Merge(target, serves, latest, failed, "never done", unjudged);
    }
}
