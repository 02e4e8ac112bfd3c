package org.fumewarden.codes;

import java.util.List;
import java.util.Map;

/**
 * What a code folder says about itself.
 *
 * @param borrows ids of other code folders whose tables it also uses
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
        List<String> lacks) {

    static CodeCard read(String id, Located root) {
        Map<String, Located> entries = root.entries(java.util.Set.of(
                "id", "name", "territory", "issuers", "edition", "checked-on", "borrows", "covers", "lacks"));
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
                words(entries, "lacks"));
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
