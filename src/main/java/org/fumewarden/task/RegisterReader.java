package org.fumewarden.task;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.fumewarden.codes.Located;

/** Reads what the register said, from the list {@code register} of a task file that was kept. */
final class RegisterReader {
    static final String NAME = "register";
    private static final int LONGEST = 2000;

    private RegisterReader() {}

    static List<RegisterNote> read(Located list) {
        if (list.isNull()) {
            return List.of();
        }
        if (!list.isList()) {
            list.complain("must be a list.", "items such as {about: wearer.fit-tested, says: a sentence}.");
            return List.of();
        }
        List<RegisterNote> notes = new ArrayList<>();
        for (Located item : list.items()) {
            if (!item.isMap()) {
                item.complain("must have about and says.", "{about: wearer.fit-tested, says: a sentence}.");
                continue;
            }
            var cells = item.entries(Set.of("about", "says"));
            Optional<String> about = words(item, "about", Optional.ofNullable(cells.get("about")));
            Optional<String> says = words(item, "says", Optional.ofNullable(cells.get("says")));
            if (about.isPresent() && says.isPresent()) {
                notes.add(new RegisterNote(about.get(), says.get()));
            }
        }
        return notes;
    }

    private static Optional<String> words(Located item, String name, Optional<Located> cell) {
        Optional<String> words =
                cell.filter(c -> c.isScalar() && !c.isNull()).map(Located::text).filter(t -> !t.isBlank());
        if (words.isEmpty()) {
            item.complain("lacks \"" + name + "\".", "{about: wearer.fit-tested, says: a sentence}.");
        }
        if (words.filter(w -> w.length() > LONGEST).isPresent()) {
            item.complain("has more than " + LONGEST + " characters in \"" + name + "\".", "a shorter sentence.");
            return Optional.empty();
        }
        return words;
    }
}
