package org.fumewarden.check;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.fumewarden.codes.Problem;
import org.fumewarden.codes.RuleFolder;
import org.fumewarden.codes.TypedApart;

/** Tables of the program that somebody's rules lack: a lost list would look like a law without it, and fail every scenario. */
final class MissingFiles {
    private static final String FILES = "files";
    private static final String WITHDRAWN = "withdrawn";

    private MissingFiles() {}

    /** One for each table of a folder that is there, unless its loss is meant. */
    static Set<Problem> in(RuleFolder folder) {
        Set<Problem> missing = new LinkedHashSet<>();
        Set<String> typed = TypedApart.beside(folder).lines().stream()
                .map(TypedApart.Line::key)
                .collect(Collectors.toSet());
        for (String part : folder.isShipped() ? List.<String>of() : folder.folders()) {
            for (String name : RuleFolder.shipped().names(part + "/tables/", ".yaml")) {
                if (folder.names(name, "").isEmpty() && !typed.contains(FILES + " / " + name + " / " + WITHDRAWN)) {
                    missing.add(new Problem(
                            name,
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
