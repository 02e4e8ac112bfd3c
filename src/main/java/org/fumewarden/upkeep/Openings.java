package org.fumewarden.upkeep;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.fumewarden.model.Duty;
import org.fumewarden.model.Subject;

/** Gathers what cannot be said for want of a circumstance. */
final class Openings {
    private record Key(Subject subject, String fact) implements Comparable<Key> {
        @Override
        public int compareTo(Key other) {
            int bySubject = subject.compareTo(other.subject);
            return bySubject != 0 ? bySubject : fact.compareTo(other.fact);
        }
    }

    private static final class Tally {
        private final Set<String> items = new LinkedHashSet<>();
        private final TreeSet<String> duties = new TreeSet<>();
    }

    private final Map<Key, Tally> tallies = new TreeMap<>();

    void add(Target target, Duty duty, String fact) {
        add(target.item().id(), target.subject(), duty, fact);
    }

    void add(String item, Subject subject, Duty duty, String fact) {
        Tally tally = tallies.computeIfAbsent(new Key(subject, fact), k -> new Tally());
        tally.items.add(item);
        tally.duties.add(duty.id());
    }

    List<Unsettled> list() {
        return tallies.entrySet().stream()
                .map(e -> new Unsettled(
                        e.getKey().subject(),
                        e.getKey().fact(),
                        List.copyOf(e.getValue().items),
                        List.copyOf(e.getValue().duties)))
                .toList();
    }
}
