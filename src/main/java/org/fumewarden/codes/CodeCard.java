package org.fumewarden.codes;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * What a code folder says about itself.
 *
 * @param borrows ids of other code folders whose tables it also uses
 * @param formerly ids by which older files name it
 * @param elsewhere tasks of it that another code decides now
 * @param program what the program says of it, where somebody changed that
 */
public record CodeCard(
        String id,
        String name,
        String territory,
        List<String> issuers,
        String edition,
        String checkedOn,
        List<String> borrows,
        List<String> covers,
        List<String> lacks,
        List<String> formerly,
        List<Elsewhere> elsewhere,
        Optional<String> program) {
    /** Where a folder says it. */
    static final String FILE = "/code.yaml";

    /**
     * Tasks of this code that another code decides now.
     *
     * @param path place in the task file
     * @param is what the task says there
     */
    public record Elsewhere(String path, String is, String code) {
        private boolean meant(Located task) {
            Located place = task;
            for (String name : path.split("\\.")) {
                place = place.isMap() ? place.entries().get(name) : null;
                if (place == null) {
                    return false;
                }
            }
            return place.isScalar() && !place.isNull() && place.text().equals(is);
        }

        private static Elsewhere read(Located item) {
            Map<String, Located> cells = item.entries(Set.of("path", "is", "code"));
            return new Elsewhere(word(item, cells, "path"), word(item, cells, "is"), word(item, cells, "code"));
        }
    }

    /** The code that decides a task which names this one. */
    public String decides(Located task) {
        return elsewhere.stream()
                .filter(e -> e.meant(task))
                .map(Elsewhere::code)
                .findFirst()
                .orElse(id);
    }

    static CodeCard read(String id, Located root) {
        Map<String, Located> entries = root.entries(Set.of(
                "id",
                "name",
                "territory",
                "issuers",
                "edition",
                "checked-on",
                "borrows",
                "covers",
                "lacks",
                "formerly",
                "elsewhere"));
        String said = word(root, entries, "id");
        if (!said.equals(id)) {
            root.complain("says id \"" + said + "\" in the folder " + id + ".", "id: " + id);
        }
        return new CodeCard(
                id,
                word(root, entries, "name"),
                word(root, entries, "territory"),
                words(entries, "issuers"),
                word(root, entries, "edition"),
                word(root, entries, "checked-on"),
                words(entries, "borrows"),
                words(entries, "covers"),
                words(entries, "lacks"),
                words(entries, "formerly"),
                entries.containsKey("elsewhere")
                        ? entries.get("elsewhere").items().stream()
                                .map(Elsewhere::read)
                                .toList()
                        : List.of(),
                Optional.empty());
    }

    /** The same where the program has something else. */
    CodeCard insteadOf(String has) {
        return has.isEmpty()
                ? this
                : new CodeCard(
                        id,
                        name,
                        territory,
                        issuers,
                        edition,
                        checkedOn,
                        borrows,
                        covers,
                        lacks,
                        formerly,
                        elsewhere,
                        Optional.of(has));
    }

    private static String word(Located root, Map<String, Located> entries, String name) {
        Located found = entries.get(name);
        if (found == null) {
            root.complain("lacks \"" + name + "\".", "add " + name + ": ...");
            return "?";
        }
        return found.text();
    }

    private static List<String> words(Map<String, Located> entries, String name) {
        return entries.containsKey(name) ? entries.get(name).words() : List.of();
    }
}
