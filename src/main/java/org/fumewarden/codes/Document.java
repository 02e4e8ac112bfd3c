package org.fumewarden.codes;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;

/**
 * A document that rules and tables cite.
 *
 * @param copyOf ids of the documents whose text it repeats: their clauses are found in it
 * @param program its title and edition as the program has them, where somebody changed one of them
 */
public record Document(String id, String title, String edition, Set<String> copyOf, Optional<String> program) {
    private static final String SOURCES = WrittenCell.SOURCES;
    private static final String LIST = "/" + SOURCES + ".yaml";
    /** What the list may say of a document. */
    public static final Set<String> CELLS =
            Set.of("id", "title", "edition", "issuer", "read", "url", "note", "copy-of");

    /** Behind the title of one that somebody changed. */
    public static final String CHANGED = " (changed, the program has ";

    private static final Document UNLISTED = new Document("", "", "", Set.of(), Optional.empty());

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

    /**
     * The documents listed in one folder of rules, by id; none where it has no list. One that somebody changed says so in its title,
     * and so does one that somebody deleted.
     */
    static Map<String, Document> listed(RuleFolder folder, String part, EditedRows edited) {
        Map<String, Document> documents = read(folder, part, edited);
        if (!folder.isShipped()) {
            read(folder.program(), part, edited)
                    .forEach((id, gone) -> documents.putIfAbsent(id, gone.insteadOf("this document")));
        }
        return documents;
    }

    private Document insteadOf(String has) {
        return has.isEmpty() ? this : new Document(id, title + CHANGED + has + ")", edition, copyOf, Optional.of(has));
    }

    private static Map<String, Document> read(RuleFolder folder, String part, EditedRows edited) {
        Map<String, Document> documents = new TreeMap<>();
        for (Located item : items(folder, part)) {
            Map<String, Located> cells = item.entries(CELLS);
            String id = text(cells, "id");
            documents.put(
                    id,
                    new Document(id, text(cells, "title"), text(cells, "edition"), copies(cells), Optional.empty())
                            .insteadOf(edited.at(item.file(), item.line()).words()));
        }
        return documents;
    }

    /** The documents that a folder lists, as they are written. */
    static List<Located> items(RuleFolder folder, String part) {
        List<Located> items = new ArrayList<>();
        for (String name : folder.names(part + LIST, "")) {
            Located root = folder.located(name);
            Located list = root.isList() ? root : root.entries(Set.of(SOURCES)).get(SOURCES);
            if (list != null) {
                items.addAll(list.items());
            }
        }
        return items;
    }

    private static String text(Map<String, Located> cells, String name) {
        return cells.containsKey(name) ? cells.get(name).text() : "";
    }

    private static Set<String> copies(Map<String, Located> cells) {
        return cells.containsKey("copy-of") ? Set.copyOf(cells.get("copy-of").words()) : Set.of();
    }
}
