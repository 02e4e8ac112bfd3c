package org.fumewarden.whatif;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.fumewarden.advice.Advice;
import org.fumewarden.advice.Bench;
import org.fumewarden.model.Lever;
import org.fumewarden.model.Row;

/** The smallest sets of changes within the user's power that would make a class suitable. Every set is decided by the engine. */
public final class Remedies {
    /** Largest set that is tried. */
    public static final int LARGEST = 4;

    /** Largest set that is tried with every lever; in larger ones each lever has to move something for the class by itself. */
    private static final int WHOLE = 3;

    /** How many sets of all levers are tried where some levers exclude each other. */
    private static final int MOST_WHOLE = 32;

    private final Bench bench;

    public Remedies(Bench bench) {
        this.bench = bench;
    }

    /** The levers that would change something in this task, in table order. */
    public List<Lever> levers() {
        Advice now = bench.advise();
        List<Lever> useful = new ArrayList<>();
        for (Row row : bench.advisor(bench.code()).base().rowsOn(now.on())) {
            if (row instanceof Lever lever && !already(now, lever) && ofUse(now, lever)) {
                useful.add(lever);
            }
        }
        return useful;
    }

    private static boolean ofUse(Advice advice, Lever lever) {
        return advice.inputs().stream()
                .filter(org.fumewarden.model.Answer.class::isInstance)
                .map(org.fumewarden.model.Answer.class::cast)
                .allMatch(a -> lever.ofUseBeside(a.path(), a.value()));
    }

    private static boolean already(Advice advice, Lever lever) {
        return advice.inputs().stream()
                .anyMatch(i -> i.path().equals(lever.path())
                        && i instanceof org.fumewarden.model.Answer a
                        && a.value().equals(lever.value()));
    }

    /** Every smallest set of levers that makes the class suitable, fewest levers first; empty when none of the tried sets does. */
    public List<List<Lever>> forClass(String deviceClass) {
        List<Lever> levers = levers();
        List<List<Lever>> found = new ArrayList<>();
        for (int size = 1; size <= LARGEST; size++) {
            for (List<Lever> set : subsets(size > WHOLE ? moving(levers, deviceClass) : levers, size)) {
                boolean smaller = found.stream().anyMatch(set::containsAll);
                if (!smaller && onePerPath(set) && serves(set, deviceClass)) {
                    found.add(set);
                }
            }
        }
        found.sort(Comparator.comparingInt(List::size));
        return found;
    }

    /**
     * A larger set that makes the class suitable and of which no lever can be left out; empty when even all levers together do
     * not.
     */
    public List<Lever> larger(String deviceClass) {
        Map<String, List<Lever>> byPath = new LinkedHashMap<>();
        levers().forEach(l ->
                byPath.computeIfAbsent(l.path(), p -> new ArrayList<>()).add(l));
        List<List<Lever>> whole = List.of(List.of());
        for (List<Lever> choices : byPath.values()) {
            List<List<Lever>> grown = new ArrayList<>();
            for (List<Lever> set : whole) {
                for (Lever choice : whole.size() < MOST_WHOLE ? choices : choices.subList(0, 1)) {
                    List<Lever> more = new ArrayList<>(set);
                    more.add(choice);
                    grown.add(more);
                }
            }
            whole = grown;
        }
        return whole.stream()
                .filter(set -> serves(set, deviceClass))
                .map(set -> least(set, deviceClass))
                .min(Comparator.comparingInt(List::size))
                .orElse(List.of());
    }

    private List<Lever> least(List<Lever> set, String deviceClass) {
        List<Lever> left = new ArrayList<>(set);
        for (Lever lever : set) {
            List<Lever> without = new ArrayList<>(left);
            without.remove(lever);
            if (serves(without, deviceClass)) {
                left = without;
            }
        }
        return List.copyOf(left);
    }

    /** The levers of which each alone changes what is said of the class. */
    private List<Lever> moving(List<Lever> levers, String deviceClass) {
        List<String> now = said(Map.of(), deviceClass);
        return levers.stream()
                .filter(l -> !said(Map.of(l.path(), l.value()), deviceClass).equals(now))
                .toList();
    }

    private List<String> said(Map<String, String> changes, String deviceClass) {
        return bench.advise(changes).respirators().stream()
                .filter(r -> r.deviceClass().equals(deviceClass))
                .flatMap(r -> r.reasons().stream())
                .map(r -> r.rule() + " " + r.says())
                .toList();
    }

    /** True when the class is suitable once the levers are pulled. */
    public boolean serves(List<Lever> set, String deviceClass) {
        Map<String, String> changes = new LinkedHashMap<>();
        set.forEach(l -> changes.put(l.path(), l.value()));
        return bench.advise(changes).respirators().stream()
                .filter(r -> r.deviceClass().equals(deviceClass))
                .anyMatch(r -> r.verdict().offered());
    }

    private static boolean onePerPath(List<Lever> set) {
        Set<String> paths = set.stream().map(Lever::path).collect(Collectors.toCollection(LinkedHashSet::new));
        return paths.size() == set.size();
    }

    static <T> List<List<T>> subsets(List<T> items, int size) {
        List<List<T>> sets = new ArrayList<>();
        grow(items, 0, size, new ArrayList<>(), sets);
        return sets;
    }

    private static <T> void grow(List<T> items, int from, int size, List<T> chosen, List<List<T>> into) {
        if (chosen.size() == size) {
            into.add(List.copyOf(chosen));
            return;
        }
        for (int i = from; i < items.size(); i++) {
            chosen.add(items.get(i));
            grow(items, i + 1, size, chosen, into);
            chosen.remove(chosen.size() - 1);
        }
    }
}
