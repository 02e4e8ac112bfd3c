package org.fumewarden.training;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.fumewarden.advice.Advice;
import org.fumewarden.codes.InputException;
import org.fumewarden.model.Lever;
import org.fumewarden.report.html.Words;
import org.fumewarden.whatif.Remedies;

/** What people on site can change in a task, each tried out by the engine once. */
final class Changes {
    private final Map<Change, Set<String>> opened = new LinkedHashMap<>();
    private final Map<Change, Advice> tried = new LinkedHashMap<>();

    /**
     * A change of one answer.
     *
     * @param own sentence in the language of the rule base
     */
    record Change(String id, String path, String value, String own) {
        String says(Words words) {
            return WordTable.rows("changes").stream()
                    .filter(r -> r.text("id").equals(id))
                    .findFirst()
                    .map(r -> r.optional(words.language()).orElse(own))
                    .orElse(own);
        }
    }

    private Changes(Told told) {
        for (Lever lever : new Remedies(told.bench()).levers()) {
            Change change = new Change(lever.id(), lever.path(), lever.value(), lever.says());
            try {
                Advice advice = told.bench().advise(Map.of(change.path(), change.value()));
                tried.put(change, advice);
                opened.put(
                        change,
                        advice.respirators().stream()
                                .filter(Told::suitable)
                                .map(r -> r.deviceClass())
                                .collect(Collectors.toSet()));
            } catch (InputException e) {
                // A change that the rest of the task does not go with is none.
            }
        }
    }

    static Changes of(Told told) {
        return new Changes(told);
    }

    List<Change> all() {
        return new ArrayList<>(tried.keySet());
    }

    /** The first change that alone makes a class suitable. */
    Optional<Change> making(String deviceClass) {
        return opened.keySet().stream().filter(c -> makes(c, deviceClass)).findFirst();
    }

    boolean makes(Change change, String deviceClass) {
        return opened.get(change).contains(deviceClass);
    }

    /** Changes that sound like help and are none. */
    static List<Change> idle(Words words) {
        return WordTable.rows("changes").stream()
                .filter(r -> r.optional("en").isPresent())
                .map(r -> new Change(r.text("id"), "", "", r.says(words.language())))
                .toList();
    }
}
