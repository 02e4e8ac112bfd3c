package org.fumewarden.check;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.fumewarden.codes.CodeBook;
import org.fumewarden.codes.InputException;
import org.fumewarden.codes.Problem;
import org.fumewarden.codes.RuleFolder;
import org.fumewarden.codes.TypedApart;

/** Tables and rules of the program that somebody's folder lacks: a lost list would look like a law without it, and fail every scenario. */
public final class MissingFiles {
    private static final String FILES = "files";
    private static final String WITHDRAWN = "withdrawn";

    private MissingFiles() {}

    /**
     * Refuses to advise under a code that lacks a table: what it says would fall silent unseen.
     *
     * @throws InputException with a problem for each table
     */
    public static void refuse(RuleFolder folder, String code) {
        Set<Problem> missing = in(folder.only(CodeBook.folders(folder, code)));
        if (!missing.isEmpty()) {
            throw new InputException(List.copyOf(missing));
        }
    }

    /** One for each file of a folder that is there, unless its loss is meant. */
    static Set<Problem> in(RuleFolder folder) {
        Set<Problem> missing = new LinkedHashSet<>();
        Set<String> typed = TypedApart.beside(folder).lines().stream()
                .map(TypedApart.Line::key)
                .collect(Collectors.toSet());
        for (String part : folder.isShipped() ? List.<String>of() : folder.folders()) {
            RuleFolder program = RuleFolder.shipped();
            List<String> wanted = Stream.of("tables/", "sources.yaml", "")
                    .flatMap(start -> program.names(part + "/" + start, start.isEmpty() ? ".drl" : ".yaml").stream())
                    .toList();
            missing.addAll(borrowed(folder, part));
            for (String name : wanted) {
                if (folder.names(name, "").isEmpty() && !typed.contains(FILES + " / " + name + " / " + WITHDRAWN)) {
                    missing.add(new Problem(
                            folder.origin() + "/" + name,
                            0,
                            "",
                            "is missing (the program has it).",
                            "restore it; to withdraw it for good add the line " + FILES + "," + name + "," + WITHDRAWN
                                    + ",DATE,REASON to " + RuleFolder.TYPED + " beside the rules."));
                }
            }
        }
        return missing;
    }

    /** The folders that a code of the program borrows, and this card of it does not: their rules and limits would fall silent. */
    private static List<Problem> borrowed(RuleFolder folder, String code) {
        if (!folder.codes().contains(code) || !RuleFolder.shipped().codes().contains(code)) {
            return List.of();
        }
        List<String> has = CodeBook.card(folder, code).borrows();
        return CodeBook.card(RuleFolder.shipped(), code).borrows().stream()
                .filter(borrowed -> !has.contains(borrowed))
                .map(borrowed -> new Problem(
                        folder.origin() + "/" + code + "/code.yaml",
                        0,
                        "borrows",
                        "lacks " + borrowed + ", from which the program takes rules and limits of this code.",
                        "add it: borrows: [" + borrowed + "]."))
                .toList();
    }
}
