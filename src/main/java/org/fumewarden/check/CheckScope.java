package org.fumewarden.check;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fumewarden.codes.CodeBook;
import org.fumewarden.codes.CodeCard;
import org.fumewarden.codes.InputException;
import org.fumewarden.codes.Nearest;
import org.fumewarden.codes.Problem;
import org.fumewarden.codes.RuleFolder;
import org.fumewarden.codes.YamlFiles;
import org.fumewarden.engine.WrittenFile;
import org.fumewarden.engine.WrittenRule;
import org.fumewarden.task.TaskTree;

/**
 * What of a rule base is checked: all of it, what one code decides, or one rule with the scenarios that name it.
 *
 * @param code only the folders of this code, and the scenarios of its tasks
 * @param rule only this rule, and the scenarios that name it: those in which it fires, and its near misses
 */
public record CheckScope(Optional<String> code, Optional<String> rule) {
    /** Everything. */
    public static final CheckScope ALL = new CheckScope(Optional.empty(), Optional.empty());

    /**
     * The folders of the scope.
     *
     * @throws InputException when the code or the rule is not there, with what cannot be read where that may be why
     */
    RuleFolder of(RuleFolder whole) {
        RuleFolder folder =
                code.map(id -> whole.only(CodeBook.folders(whole, id))).orElse(whole);
        rule.ifPresent(id -> {
            List<WrittenFile> files = WrittenFile.readAll(folder);
            List<String> known = files.stream()
                    .flatMap(f -> f.rules().stream())
                    .map(WrittenRule::id)
                    .toList();
            List<Problem> refused =
                    files.stream().flatMap(f -> f.refused().stream()).toList();
            if (!known.contains(id)) {
                Problem missing = new Problem(
                        folder.origin(), 0, "--rule", "holds no rule \"" + id + "\".", Nearest.remedy(id, known));
                throw new InputException(refused.isEmpty() ? List.of(missing) : refused);
            }
        });
        return folder;
    }

    /** True for a rule that this scope must see fire and be silent: shared ones may do so under another code. */
    boolean covers(WrittenRule one) {
        return rule.map(one.id()::equals).orElse(code.isEmpty() || isOwn(one.folder()));
    }

    /** True for what is wrong with something of this scope. */
    boolean concerns(Problem problem) {
        return rule.isEmpty()
                || rule.get().equals(problem.field())
                || problem.file().equals(RuleFolder.TYPED);
    }

    /** True for a file whose rows this scope must see used. */
    boolean owns(Problem problem) {
        return rule.isEmpty()
                && (code.isEmpty()
                        || isOwn(Path.of(problem.file())
                                .getParent()
                                .getParent()
                                .getFileName()
                                .toString()));
    }

    private boolean isOwn(String folder) {
        return code.filter(folder::equals).isPresent();
    }

    /** The scenarios of the scope; one that cannot be read belongs to every scope. */
    List<Path> scenarios(Path below, RuleFolder folder) {
        List<Path> files = new ArrayList<>(Scenario.files(below));
        rule.ifPresent(id -> files.removeIf(file -> !text(file).contains(id)));
        code.ifPresent(id -> {
            CodeCard card = CodeBook.card(folder, id);
            files.removeIf(file -> !decides(card, file));
        });
        return files;
    }

    private static String text(Path file) {
        return YamlFiles.text(file.toString(), YamlFiles.bytes(file));
    }

    private static boolean decides(CodeCard card, Path file) {
        try {
            return TaskTree.top(TaskTree.read(file), "code")
                    .filter(named -> named.equals(card.id()) || card.formerly().contains(named))
                    .isPresent();
        } catch (InputException e) {
            return true;
        }
    }
}
