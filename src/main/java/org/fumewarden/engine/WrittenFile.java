package org.fumewarden.engine;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.lang3.StringUtils;
import org.drools.drl.ast.descr.PackageDescr;
import org.fumewarden.codes.Problem;
import org.fumewarden.codes.RuleFolder;
import org.fumewarden.model.Kept;

/**
 * One rule file as it is written, read by the parser of the engine.
 *
 * @param folder rule folder, {@code shared} or a code
 * @param phase name of the file without its ending
 * @param named package that the file says it is in
 * @param rules none when the file is not in the language of rules
 * @param refused what is beyond the language of rules
 */
public record WrittenFile(
        String file, String folder, String phase, String named, List<WrittenRule> rules, List<Problem> refused) {

    private static final int FILES_KEPT = 200;

    /** Files as they were read: one check asks for them several times. */
    private static final Kept<Source, WrittenFile> READ = new Kept<>(FILES_KEPT);

    private record Source(String file, String text) {}

    /** Reads every rule file of a rule base. */
    public static List<WrittenFile> readAll(RuleFolder base) {
        RuleTokens words = RuleTokens.ofModel();
        return base.names("", ".drl").stream()
                .map(name -> kept(base, name, words))
                .toList();
    }

    private static WrittenFile kept(RuleFolder base, String name, RuleTokens words) {
        String text = base.text(name);
        String file = base.origin() + "/" + name;
        return READ.of(new Source(file, text), source -> read(file, name, text, words));
    }

    private static WrittenFile read(String file, String name, String text, RuleTokens words) {
        String folder = StringUtils.substringBefore(name, "/");
        String phase = StringUtils.removeEnd(StringUtils.substringAfterLast(name, "/"), ".drl");
        List<Problem> refused = new ArrayList<>();
        PackageDescr parsed = RuleGate.read(file, text, words, refused).orElseGet(() -> new PackageDescr(""));
        List<WrittenRule> rules = parsed.getRules().stream()
                .map(rule -> RuleDescriptions.rule(file, folder, phase, text, rule))
                .toList();
        return new WrittenFile(file, folder, phase, parsed.getName(), rules, List.copyOf(refused));
    }
}
