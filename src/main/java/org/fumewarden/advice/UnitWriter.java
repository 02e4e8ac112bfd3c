package org.fumewarden.advice;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.fumewarden.assessment.ExposureTables;
import org.fumewarden.codes.CodeBook;
import org.fumewarden.model.Answer;
import org.fumewarden.model.DeviceClass;
import org.fumewarden.model.Measure;
import org.fumewarden.model.Member;
import org.fumewarden.model.Offer;
import org.fumewarden.model.UnitFinding;
import org.fumewarden.task.Task;
import org.fumewarden.trail.Step;
import org.fumewarden.trail.Trail;

/** Gathers what the trail says of the unit in hand. */
final class UnitWriter {
    private static final String NOT_FOR_USE = "not-for-use";
    private static final String HEALS = "heals-";
    /** What need not be said besides an act, since the act settles it. */
    private static final String SETTLES = "settled-by-";

    private static final String HAND_IN = "heal-hand-in";
    private static final String AS_NAMED = "heal-right-filter";
    private static final String OTHER = "heal-other-kit";

    private UnitWriter() {}

    /**
     * The unit; empty when the task tells nothing of one.
     *
     * @param filter what is said of the filter to wear; empty where no class is named
     */
    static Optional<UnitInHand> write(
            CodeBook book, Task task, ExposureTables figures, Trail trail, Optional<String> filter) {
        List<Step> found = trail.concluding(UnitFinding.class).toList();
        String id = word(task, "unit");
        String deviceClass = word(task, "class-in-hand");
        if (found.isEmpty() && id.isEmpty() && deviceClass.isEmpty() && !told(task)) {
            return Optional.empty();
        }
        Set<String> against = found.stream()
                .map(s -> (UnitFinding) s.conclusion())
                .filter(f -> f.verdict().equals(NOT_FOR_USE))
                .map(UnitFinding::condition)
                .collect(Collectors.toSet());
        String condition = against.isEmpty() ? found.isEmpty() ? "nothing-found" : "open" : NOT_FOR_USE;
        Set<String> heals = items(figures, HEALS, against);
        heals.removeAll(items(figures, SETTLES, heals));
        if (!against.isEmpty()
                && elsewhere(trail, figures.all(DeviceClass.class).toList(), deviceClass)) {
            heals.retainAll(Set.of(HAND_IN));
            heals.add(OTHER);
        }
        if (filter.isEmpty()) {
            heals.remove(OTHER);
        }
        if (filter.filter(f -> !f.equals(Respirator.SUPPLIED_AIR)).isEmpty()) {
            heals.remove(AS_NAMED);
        }
        List<String> acts = heals.stream().map(book.vocabulary()::name).toList();
        return Optional.of(new UnitInHand(id, deviceClass, condition, Reason.once(found), acts));
    }

    /**
     * Whether what may be worn is none that mending the unit would make: its class is barred, or of one that is not named no class
     * with a filter is left.
     */
    static boolean elsewhere(Trail trail, List<DeviceClass> classes, String deviceClass) {
        Set<String> offered =
                trail.all(Offer.class).stream().map(Offer::deviceClass).collect(Collectors.toSet());
        return !offered.isEmpty()
                && classes.stream()
                        .filter(c -> deviceClass.isEmpty() ? c.filters() : c.id().equals(deviceClass))
                        .map(DeviceClass::id)
                        .noneMatch(offered::contains);
    }

    /** The items of the sets that are named after these, in the order of their table. */
    private static Set<String> items(ExposureTables figures, String prefix, Set<String> of) {
        return figures.all(Member.class)
                .filter(m -> m.set().startsWith(prefix) && of.contains(m.set().substring(prefix.length())))
                .map(Member::item)
                .collect(Collectors.toCollection(LinkedHashSet::new));
    }

    private static String word(Task task, String question) {
        return task.inputs().stream()
                .filter(Answer.class::isInstance)
                .map(Answer.class::cast)
                .filter(a -> a.question().equals(question))
                .map(Answer::value)
                .findFirst()
                .orElse("");
    }

    private static boolean told(Task task) {
        return task.inputs().stream()
                .anyMatch(i -> i instanceof Measure m && m.question().equals("measured-flow"));
    }
}
