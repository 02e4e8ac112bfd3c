package org.fumewarden.model;

import java.util.List;
import java.util.Map;

/**
 * A word of a catalogue, for example a process or a coating, with the name people read.
 *
 * @param only facts of a thing without which it is not spoken of, such as {@code face-seal=tight}; any of them will do
 */
public record Term(RowRef ref, String catalogue, String id, String name, List<String> only) implements Row {
    public Term {
        only = List.copyOf(only);
    }

    /** False for a thing of another kind; a fact that is not recorded leaves a term in. */
    public boolean concerns(Map<String, List<String>> facts) {
        return only.isEmpty()
                || only.stream().anyMatch(o -> {
                    String fact = o.substring(0, o.indexOf('='));
                    return !facts.containsKey(fact) || facts.get(fact).contains(o.substring(fact.length() + 1));
                });
    }
}
