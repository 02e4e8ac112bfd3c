package org.fumewarden.check;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.fumewarden.codes.Document;
import org.fumewarden.codes.Located;
import org.fumewarden.codes.Nearest;
import org.fumewarden.codes.Problem;
import org.fumewarden.codes.RuleFolder;
import org.fumewarden.codes.YamlFiles;

/** The documents that rules and tables may cite. */
record SourceList(String file, Set<String> ids, List<Problem> problems) {
    private static final String LIST = "shared/sources.yaml";
    private static final List<String> REQUIRED = List.of("id", "title", "edition", "issuer", "read");

    /**
     * Reads rules/shared/sources.yaml: a list of documents, or one below the name {@code sources}.
     *
     * @throws org.fumewarden.codes.InputException when there is no such file
     */
    static SourceList read(Path file) {
        return read(file.toString(), YamlFiles.read(file));
    }

    /** The list that stands among the rules; without one there, that of the program. */
    static SourceList of(RuleFolder rules) {
        RuleFolder folder = rules.names(LIST, "").isEmpty() ? RuleFolder.shipped() : rules;
        return read(folder.origin() + "/" + LIST, folder.located(LIST));
    }

    private static SourceList read(String file, Located root) {
        Set<String> ids = new TreeSet<>();
        List<Located> copies = new ArrayList<>();
        for (Located item : Document.items(root)) {
            Map<String, Located> cells = item.entries(Document.CELLS);
            Optional.ofNullable(cells.get("copy-of")).ifPresent(copies::add);
            for (String required : REQUIRED) {
                if (!cells.containsKey(required) || cells.get(required).text().isEmpty()) {
                    item.complain("lacks \"" + required + "\".", "add " + required + ": \"...\".");
                }
            }
            if (cells.containsKey("id") && !ids.add(cells.get("id").text())) {
                item.complain("is listed twice: " + cells.get("id").text() + ".", "keep one of the two.");
            }
        }
        copies.forEach(copied -> copied.words().stream()
                .filter(id -> !ids.contains(id))
                .forEach(id -> copied.complain("names no document: " + id + ".", Nearest.remedy(id, ids))));
        return new SourceList(file, ids, List.copyOf(root.problems()));
    }

    /** Complains when a cited source is not listed. */
    void require(String source, String citedIn, int line, String field, List<Problem> into) {
        if (!ids.contains(source)) {
            into.add(new Problem(
                    citedIn,
                    line,
                    field,
                    "cites \"" + Located.shown(source) + "\", which is not in " + file + ".",
                    Nearest.remedy(source, ids)));
        }
    }
}
