package org.fumewarden.duties;

import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Supplier;
import org.fumewarden.model.Term;
import org.fumewarden.upkeep.AirTest;
import org.fumewarden.upkeep.Details;
import org.fumewarden.upkeep.Examination;
import org.fumewarden.upkeep.FitTest;
import org.fumewarden.upkeep.Forms;
import org.fumewarden.upkeep.Item;
import org.fumewarden.upkeep.MaskFace;
import org.fumewarden.upkeep.Result;
import org.fumewarden.upkeep.Store;

/**
 * Makes what an entry says from a filled form, judged by what the register knows of the unit and by the levels of the code.
 *
 * <p>A measured flow is held against the maker's minimum and a cylinder against its full pressure, both from the register when
 * the form lacks them; breathing air and fit tests against the levels of the code. No judgement is milder than the person who
 * did the deed.
 */
public final class Judging {
    /**
     * What goes into the log.
     *
     * @param says the judgement in a sentence; empty when there was nothing to judge
     */
    public record Judged(Details details, String says) {}

    private static final String BREATHING = "breathing";
    private static final Set<String> BREATHED = Set.of(BREATHING, "certificate");

    private final Store store;
    private final Supplier<DutyBook> book;

    /**
     * For the forms of a store.
     *
     * @param book asked for only when a level of the code decides
     */
    public Judging(Store store, Supplier<DutyBook> book) {
        this.store = store;
        this.book = book;
    }

    /**
     * Judges a form.
     *
     * @param item id of what the entry is about
     * @param form values by field name
     * @throws org.fumewarden.upkeep.StoreException when a field is missing or cannot be what it is
     */
    public Judged of(String kind, String item, Map<String, String> form) {
        Map<String, String> values = new LinkedHashMap<>(form);
        fill(values, item, "flow", "minimum-flow", Item.Unit::minimumFlow);
        fill(values, item, "cylinder-pressure", "cylinder-full-pressure", Item.Unit::cylinderFullPressure);
        Details details = Forms.details(kind, values);
        if (details instanceof FitTest test) {
            return fit(test, item);
        }
        if (details instanceof AirTest test) {
            Result.ofCheck("result", test.result());
            test.topicAmong(book.get().catalogue("air-test-topics").stream()
                    .map(Term::id)
                    .toList());
            return breathed(test, item)
                    ? book.get()
                            .airLimits()
                            .map(l -> l.judged(test, test.topic().equals(BREATHING)))
                            .map(j -> new Judged(j.test(), j.says()))
                            .orElse(new Judged(test, ""))
                    : new Judged(test, "");
        }
        if (details instanceof Examination examination
                && examination.cylinderPressure().isPresent()) {
            return book.get()
                    .cylinderLevel()
                    .map(l -> l.judged(examination))
                    .map(j -> new Judged(j.examination(), j.says()))
                    .orElse(told(examination, values));
        }
        return told(details, values);
    }

    private Judged fit(FitTest form, String item) {
        FitTest test = MaskFace.told(store, item, form);
        Optional<String> mode = FitMode.of(store, book.get().duties(), form.model());
        String told = mode.map(m -> " " + m).orElse("");
        return book.get()
                .fitLevels()
                .map(l -> l.judged(test, mode.isPresent()))
                .map(j -> new Judged(j.test(), j.says() + told))
                .orElse(new Judged(test, told.strip()));
    }

    /** A check that was given as passed and fails by its own figures. */
    private static Judged told(Details details, Map<String, String> values) {
        boolean turned = details.result() == Result.FAILED
                && values.getOrDefault("result", "").strip().equals(Result.PASSED.key())
                && !details.whyFailed().isEmpty();
        return new Judged(details, turned ? "Given as passed, it counts as failed: " + details.whyFailed() + "." : "");
    }

    /** Air that somebody breathes from a line or a cylinder, whatever the topic says. */
    private boolean breathed(AirTest test, String item) {
        return BREATHED.contains(test.topic())
                || store.item(item).filter(Item.AirSupply.class::isInstance).isPresent();
    }

    private void fill(
            Map<String, String> values,
            String item,
            String read,
            String against,
            Function<Item.Unit, Optional<BigDecimal>> registered) {
        boolean wanted = !values.getOrDefault(read, "").isBlank()
                && values.getOrDefault(against, "").isBlank();
        if (wanted) {
            store.item(item)
                    .filter(Item.Unit.class::isInstance)
                    .flatMap(u -> registered.apply((Item.Unit) u))
                    .ifPresent(v -> values.put(against, v.toPlainString()));
        }
    }
}
