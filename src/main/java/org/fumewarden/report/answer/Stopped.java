package org.fumewarden.report.answer;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.fumewarden.advice.Advice;
import org.fumewarden.advice.Reason;
import org.fumewarden.advice.Respirator;
import org.fumewarden.advice.Status;
import org.fumewarden.advice.Suitability;
import org.fumewarden.model.Bar;
import org.fumewarden.model.Doubt;
import org.fumewarden.model.Standing;
import org.fumewarden.trail.Step;

/** Why nobody may start, apart from what only holds once that is put right. */
record Stopped(Advice advice) {
    private static final Set<String> OF_WEARER = Set.of("medically-cleared", "trained");

    private static final Set<String> AT_THE_SEAL = Set.of("facial-hair", "spectacles", "fit-tested", "fit-test-method");

    /** True when only this wearer is in the way, and another may do the work. */
    boolean byWearer() {
        return stops().contains("only-this-wearer");
    }

    /** True when what the code lists holds none of it, which leaves apparatus that it lists without a factor. */
    boolean byList() {
        return stops().contains("only-filters-listed");
    }

    /** The key of the sentence for who would have worn something. */
    String words(boolean proved) {
        if (byWearer()) {
            return "wear.wearer";
        }
        if (byList()) {
            return "wear.stay-out.list";
        }
        if (advice.respirators().isEmpty() && advice.stops().isEmpty()) {
            return "wear.stay-out.no-factors";
        }
        return proved ? "wear.stay-out.proved" : "wear.stay-out";
    }

    /** True when nothing but the wearer speaks against a class. */
    boolean ofWearerAlone(String deviceClass) {
        List<Bar> bars = advice.trail().all(Bar.class).stream()
                .filter(b -> b.deviceClass().equals(deviceClass))
                .toList();
        return !bars.isEmpty()
                && bars.stream().allMatch(b -> OF_WEARER.contains(b.because()) || AT_THE_SEAL.contains(b.because()));
    }

    /** What stops the work. */
    List<Reason> now() {
        if (!WearPart.ofTheTeam(advice).isEmpty()) {
            return ofTheTask();
        }
        if (advice.stops().isEmpty()) {
            return common();
        }
        List<Reason> now = new ArrayList<>(advice.stops());
        now.removeAll(later());
        return now;
    }

    /** A rescue and a fire are stopped by what they are; what else is wrong with the air stands beside it. */
    private List<Reason> ofTheTask() {
        List<Reason> now = advice.trail()
                .concluding(Standing.class)
                .filter(s -> ((Standing) s.conclusion()).because().equals("rescue-plan"))
                .map(Reason::of)
                .collect(Collectors.toCollection(ArrayList::new));
        Set<String> stops = stops();
        stops.remove("fire");
        advice.stops().stream().filter(r -> stops.contains(r.subject())).forEach(now::add);
        return now;
    }

    /** What forbids the start, as the rules conclude it; a gate that only bars filters is none. */
    private Set<String> stops() {
        return advice.trail().all(Standing.class).stream()
                .filter(s -> s.state().equals(Status.DO_NOT_ENTER.key()))
                .map(Standing::because)
                .collect(Collectors.toCollection(HashSet::new));
    }

    /** What still holds once the stop is lifted: one sentence for each gate. */
    List<Reason> after() {
        Set<String> gates = new HashSet<>();
        return later().stream().filter(r -> gates.add(r.subject())).toList();
    }

    private List<Reason> later() {
        Set<String> stops = stops();
        List<Reason> later = advice.stops().stream()
                .filter(r -> !stops.contains(r.subject()))
                .toList();
        return later.size() == advice.stops().size() ? List.of() : later;
    }

    private List<Reason> common() {
        if (advice.respirators().isEmpty()) {
            return List.of();
        }
        List<String> common = advice.barringAll();
        Set<String> bars = bars(byWearer() ? b -> OF_WEARER.contains(b.because()) : b -> true);
        List<Reason> reasons = advice.respirators().get(0).reasons().stream()
                .filter(r -> common.contains(r.says()))
                .toList();
        // A gas without a known filter bars nothing, but it is as much a reason as the one that does: it comes first.
        Stream<Reason> unheld = reasons.stream().filter(r -> byList() && unheld().contains(r.step()));
        Stream<Reason> barring = reasons.stream().filter(r -> bars.contains(r.step()));
        // Where the list ends, what asks for more than it holds comes before what it lacks.
        Stream<Reason> asking =
                byList() ? advice.requiredFactor().reasons().stream().limit(1) : Stream.empty();
        return Stream.of(asking, unheld, barring).flatMap(s -> s).toList();
    }

    /** The steps that leave open which filter holds a gas. */
    private Set<String> unheld() {
        return advice.trail()
                .concluding(Doubt.class)
                .filter(s -> ((Doubt) s.conclusion()).ofFilter())
                .map(Step::id)
                .collect(Collectors.toSet());
    }

    /** The class that protects most, where nothing bars every class alike: what bars it leaves none. */
    Optional<Respirator> strongest() {
        return now().isEmpty()
                        && advice.with(Suitability.BARRED).size()
                                == advice.respirators().size()
                ? advice.respirators().stream()
                        .filter(r -> r.factor().isPresent())
                        .max(Comparator.comparing(r -> r.factor().get()))
                : Optional.empty();
    }

    /** What bars a class, without what only leaves it open. */
    List<Reason> barring(Respirator respirator) {
        Set<String> bars = bars(b -> true);
        return respirator.reasons().stream()
                .filter(r -> bars.contains(r.step()))
                .toList();
    }

    private Set<String> bars(Predicate<Bar> which) {
        return advice.trail()
                .concluding(Bar.class)
                .filter(s -> which.test((Bar) s.conclusion()))
                .map(Step::id)
                .collect(Collectors.toSet());
    }
}
