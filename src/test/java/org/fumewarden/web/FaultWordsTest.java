package org.fumewarden.web;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import java.util.List;
import java.util.ResourceBundle;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.fumewarden.codes.Fault;
import org.junit.jupiter.api.Test;

/** Each kind of fault has its sentence on the page, and no sentence is left of a kind that is gone. */
final class FaultWordsTest {
    private static final Set<String> NO_KIND = Set.of("count", "use");

    @Test
    void eachKindOfFaultHasItsSentence() {
        Set<String> sentences = new TreeSet<>();
        ResourceBundle.getBundle("org.fumewarden.messages").keySet().stream()
                .flatMap(key -> Stream.of("ui.fault.", "ui.entry.")
                        .filter(key::startsWith)
                        .map(front -> key.substring(front.length())))
                .filter(key -> !NO_KIND.contains(key))
                .forEach(sentences::add);
        List<String> kinds =
                Arrays.stream(Fault.values()).map(Fault::key).sorted().toList();
        assertEquals(kinds.stream().collect(Collectors.joining("\n")), String.join("\n", sentences));
    }
}
