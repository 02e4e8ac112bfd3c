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
            List<String> wanted = Stream.concat(
                            program.names(part + "/tables/", ".yaml").stream(),
                            program.names(part + "/", ".drl").stream())
                    .toList();
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
}
