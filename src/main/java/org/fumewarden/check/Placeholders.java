package org.fumewarden.check;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.fumewarden.codes.CodeBook;
import org.fumewarden.codes.InputException;
import org.fumewarden.codes.Problem;
import org.fumewarden.codes.RuleFolder;

/** What a scaffold leaves to be filled in: no sheet may be printed while a code still holds such a word. */
public final class Placeholders {
    private static final Pattern LEFT = Pattern.compile("\\b(?:give-an?|name-the|say-(?:what|why|which))-[a-z-]+");
    private static final Pattern REMARK = Pattern.compile("(?:^|\\s)(?:#|//).*");

    private Placeholders() {}

    /**
     * Refuses a code that is not filled in.
     *
     * @throws InputException with a problem for each word that is left
     */
    public static void refuse(RuleFolder folder, String code) {
        List<Problem> problems = in(folder, CodeBook.folders(folder, code), name -> !folder.isShipped(name));
        if (!problems.isEmpty()) {
            throw new InputException(problems);
        }
    }

    /** The words that are left in some folders of rules. */
    static List<Problem> in(RuleFolder folder, List<String> parts) {
        return in(folder, parts, name -> true);
    }

    private static List<Problem> in(RuleFolder folder, List<String> parts, Predicate<String> some) {
        return parts.stream()
                .flatMap(part -> folder.names(part + "/", "").stream())
                .filter(some)
                .flatMap(name -> in(folder.origin() + "/" + name, folder.text(name)).stream())
                .toList();
    }

    /** The words that are left in a text. */
    static List<Problem> in(String file, String text) {
        List<Problem> problems = new ArrayList<>();
        List<String> lines = text.lines().toList();
        for (int i = 0; i < lines.size(); i++) {
            Matcher left = LEFT.matcher(REMARK.matcher(lines.get(i)).replaceAll(""));
            if (left.find()) {
                problems.add(new Problem(file, i + 1, left.group(), "is not filled in.", "write what holds there."));
            }
        }
        return problems;
    }
}
