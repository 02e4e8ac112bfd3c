package org.fumewarden.codes;

import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;

/**
 * A document that rules and tables cite.
 *
 * @param copyOf ids of the documents whose text it repeats: their clauses are found in it
 */
public record Document(String id, String title, String edition, Set<String> copyOf) {
    private static final String LIST = "/sources.yaml";
    /** What the list may say of a document. */
    public static final Set<String> CELLS =
            Set.of("id", "title", "edition", "issuer", "read", "url", "note", "copy-of");

    private static final Document UNLISTED = new Document("", "", "", Set.of());

    /** Documents by their ids; one that says nothing for an id that is not listed. */
    static Function<String, Document> among(Map<String, Document> documents) {
        return id -> documents.getOrDefault(id, UNLISTED);
    }

    /** A list of no document. */
    static Document none(String id) {
        return UNLISTED;
    }

    /** The edition, empty where the list states none. */
    String statedEdition() {
        return edition.equals("not stated") ? "" : edition;
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
                documents.put(id, new Document(id, text(cells, "title"), text(cells, "edition"), copies(cells)));
            }
        }
        return documents;
    }

    private static String text(Map<String, Located> cells, String name) {
        return cells.containsKey(name) ? cells.get(name).text() : "";
    }

    private static Set<String> copies(Map<String, Located> cells) {
        return cells.containsKey("copy-of") ? Set.copyOf(cells.get("copy-of").words()) : Set.of();
    }
}
