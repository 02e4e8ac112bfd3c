package org.fumewarden.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.ResourceBundle;
import java.util.Set;
import org.fumewarden.codes.Problem;
import org.fumewarden.codes.Vocabulary;

/** Names of the form's catalogues that the other languages of the program lack; English is shown in their place. */
final class MissingNames {
    private static final Set<String> NAMED = Set.of("process", "base-metal", "coating", "filler");
    private static final List<Locale> LANGUAGES = List.of(Locale.GERMAN);

    private MissingNames() {}

    static List<Problem> check(Vocabulary vocabulary) {
        List<String> wanted = new ArrayList<>();
        vocabulary.agents().forEach(id -> wanted.add("agent." + id));
        vocabulary.questions().stream()
                .filter(q -> NAMED.contains(q.id()))
                .forEach(q -> vocabulary.choices(q).keySet().forEach(id -> wanted.add("choice." + q.id() + "." + id)));
        List<Problem> problems = new ArrayList<>();
        for (Locale language : LANGUAGES) {
            Set<String> named =
                    ResourceBundle.getBundle("org.fumewarden.names", language).keySet();
            String file = "src/main/resources/org/fumewarden/names_" + language + ".properties";
            wanted.stream()
                    .filter(key -> !named.contains(key))
                    .map(key ->
                            new Problem(file, 0, key, "has no name in this language.", "add a line " + key + "=NAME."))
                    .forEach(problems::add);
        }
        return problems;
    }
}
