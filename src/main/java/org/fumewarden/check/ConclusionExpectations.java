package org.fumewarden.check;

import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.BiConsumer;
import java.util.stream.Collectors;
import org.fumewarden.codes.Located;
import org.fumewarden.codes.Nearest;
import org.fumewarden.model.Account;
import org.fumewarden.model.ByChoice;
import org.fumewarden.model.Caution;
import org.fumewarden.model.Conclusion;
import org.fumewarden.model.Condition;
import org.fumewarden.model.Control;
import org.fumewarden.model.Demand;
import org.fumewarden.model.Doubt;
import org.fumewarden.model.Interim;
import org.fumewarden.model.Ruling;
import org.fumewarden.model.Standing;
import org.fumewarden.model.Stop;
import org.fumewarden.model.Trait;
import org.fumewarden.model.UnitFinding;
import org.fumewarden.trail.Step;
import org.fumewarden.trail.Trail;

/** Compares what a scenario expects to be concluded, by outcome and not by rule, with the conclusions that stand. */
final class ConclusionExpectations {
    /** Keys that list subjects: {@code cautions: [odour]}. */
    private static final Map<String, Class<? extends Conclusion>> LISTS = Map.of(
            "by-choice", ByChoice.class,
            "cautions", Caution.class,
            "controls", Control.class,
            "interim", Interim.class,
            "stops", Stop.class);

    /** Keys that list what is concluded about each subject: {@code conditions: {th3: [heat]}}. */
    private static final Map<String, Class<? extends Conclusion>> MAPS = Map.of(
            "accounts", Account.class,
            "circumstances", Trait.class,
            "conditions", Condition.class,
            "demands", Demand.class,
            "doubts", Doubt.class,
            "settled", Ruling.class,
            "standings", Standing.class,
            "unit", UnitFinding.class);

    private final Trail trail;

    ConclusionExpectations(Trail trail) {
        this.trail = trail;
    }

    /** The keys that are compared here. */
    static Set<String> keys() {
        Set<String> keys = new TreeSet<>(LISTS.keySet());
        keys.addAll(MAPS.keySet());
        return keys;
    }

    /** Compares one entry of the expectations; each difference is a complaint at its line. */
    void compare(String key, Located place) {
        if (LISTS.containsKey(key)) {
            Set<String> found = trail.all(LISTS.get(key)).stream()
                    .map(Conclusion::subject)
                    .collect(Collectors.toCollection(TreeSet::new));
            words(place).forEach(item -> among(item, item.text(), "among the " + key, found));
        } else if (MAPS.containsKey(key)) {
            Map<String, Set<String>> found = bySubject(MAPS.get(key));
            place.entries().forEach((subject, items) -> {
                if (!found.containsKey(subject)) {
                    items.complain(
                            "expects \"" + Located.shown(subject) + "\" among the " + key + ", which is not there.",
                            Nearest.remedy(subject, found.keySet()));
                    return;
                }
                words(items).forEach(item -> among(item, item.text(), "for " + subject, found.get(subject)));
            });
        }
    }

    private static List<Located> words(Located place) {
        return place.isScalar() && !place.isNull() ? List.of(place) : place.items();
    }

    private static void among(Located item, String word, String where, Collection<String> found) {
        if (!found.contains(word)) {
            item.complain(
                    "expects \"" + Located.shown(word) + "\" " + where + ", which is not there.",
                    Nearest.remedy(word, found));
        }
    }

    private Map<String, Set<String>> bySubject(Class<? extends Conclusion> type) {
        Map<String, Set<String>> found = new TreeMap<>();
        BiConsumer<String, String> put = (subject, word) ->
                found.computeIfAbsent(subject, k -> new TreeSet<>()).add(word);
        trail.concluding(type).map(Step::conclusion).forEach(c -> {
            if (c instanceof Condition x) {
                put.accept(x.deviceClass(), x.topic());
            } else if (c instanceof Trait x) {
                put.accept(x.circumstance(), x.value());
            } else if (c instanceof Doubt x) {
                put.accept(x.deviceClass(), x.question());
            } else if (c instanceof Ruling x) {
                put.accept(x.topic(), x.value());
            } else if (c instanceof Standing x) {
                put.accept(x.because(), x.state());
            } else if (c instanceof Account x) {
                put.accept(x.agent(), x.averaging() + " " + x.kind().key());
            } else if (c instanceof Demand x) {
                put.accept(x.agent(), x.form());
            } else if (c instanceof UnitFinding x) {
                put.accept(x.condition(), x.verdict());
            }
        });
        return found;
    }
}
