package org.fumewarden.report;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.HashMap;
import java.util.Map;
import java.util.TreeMap;
import org.fumewarden.advice.Advice;
import org.fumewarden.trail.Premise;
import org.fumewarden.trail.Step;

/** Names of ids in one advice, each told once. An id that is not here is named by its own words. */
final class Names {
    /** Tables whose rows say nothing but a name. */
    private static final String AGENTS = "agents#";

    private static final String EQUIPMENT = "equipment#";

    /** In their order, and to look them up: each fact of a trail asks for several. */
    private final Map<String, String> names;

    private final Map<String, String> found;

    private Names(Map<String, String> names) {
        this.names = names;
        this.found = new HashMap<>(names);
    }

    /** The names that an advice uses. */
    static Names of(Advice advice) {
        Map<String, String> names = new TreeMap<>();
        advice.accounts().forEach(a -> names.put(a.account().agent(), a.name()));
        advice.respirators().forEach(r -> names.put(r.deviceClass(), r.name()));
        for (Step step : advice.trail().steps()) {
            for (Premise premise : step.premises()) {
                String address = premise.address();
                if (premise.kind().equals("row") && (address.startsWith(AGENTS) || address.startsWith(EQUIPMENT))) {
                    names.putIfAbsent(address.substring(address.indexOf('#') + 1), premise.words());
                }
            }
        }
        names.entrySet().removeIf(n -> n.getValue().equals(spaced(n.getKey())));
        return new Names(names);
    }

    /** The names that a file tells. */
    static Names in(JsonNode told) {
        Map<String, String> names = new TreeMap<>();
        told.fields().forEachRemaining(n -> names.put(n.getKey(), n.getValue().asText()));
        return new Names(names);
    }

    Map<String, String> all() {
        return names;
    }

    String of(String id) {
        return found.computeIfAbsent(id, Names::spaced);
    }

    private static String spaced(String id) {
        return id.replace('-', ' ');
    }
}
