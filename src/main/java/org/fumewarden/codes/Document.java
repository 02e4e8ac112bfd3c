package org.fumewarden.codes;

import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.UnaryOperator;

/** A document that rules and tables cite. */
public record Document(String id, String title, String edition) {
    private static final String LIST = "/sources.yaml";
    private static final Set<String> CELLS = Set.of("id", "title", "edition", "issuer", "read", "url", "note");

    /** The edition of each document; empty where the list states none. */
    static UnaryOperator<String> editions(Map<String, Document> documents) {
        return id -> documents.containsKey(id) && !documents.get(id).edition().equals("not stated")
                ? documents.get(id).edition()
                : "";
    }

    /** The documents listed in one folder of rules, by id; none where it has no list. */
    static Map<String, Document> listed(RuleFolder folder, String part) {
        Map<String, Document> documents = new TreeMap<>();
        for (String name : folder.names(part + LIST, "")) {
            Located root = folder.located(name);
            Located list =
                    root.isList() ? root : root.entries(Set.of("sources")).get("sources");
            if (list == null) {
                continue;
            }
            for (Located item : list.items()) {
                Map<String, Located> cells = item.entries(CELLS);
                String id = text(cells, "id");
                documents.put(id, new Document(id, text(cells, "title"), text(cells, "edition")));
            }
        }
        return documents;
    }

    private static String text(Map<String, Located> cells, String name) {
        return cells.containsKey(name) ? cells.get(name).text() : "";
    }
}
