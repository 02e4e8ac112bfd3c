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

    /** By their text, wherever it lies: one check asks for a file several times, and a copy of the rules changes few. */
    private static final Kept<Source, WrittenFile> READ = new Kept<>(FILES_KEPT);

    private record Source(String name, String text) {}

    /** Reads every rule file of a rule base. */
    public static List<WrittenFile> readAll(RuleFolder base) {
        return read(base, base.names("", ".drl"));
    }

    static List<WrittenFile> read(RuleFolder base, List<String> names) {
        RuleTokens words = RuleTokens.ofModel();
        return names.stream()
                .map(name -> READ.of(new Source(name, base.text(name)), source -> read(source, words))
                        .at(base.origin() + "/" + name))
                .toList();
    }

    private static WrittenFile read(Source source, RuleTokens words) {
        String name = source.name();
        String folder = StringUtils.substringBefore(name, "/");
        String phase = StringUtils.removeEnd(StringUtils.substringAfterLast(name, "/"), ".drl");
        List<Problem> refused = new ArrayList<>();
        PackageDescr parsed = RuleGate.read(name, source.text(), words, refused).orElseGet(() -> new PackageDescr(""));
        List<WrittenRule> rules = parsed.getRules().stream()
                .map(rule -> RuleDescriptions.rule(name, folder, phase, source.text(), rule))
                .toList();
        return new WrittenFile(name, folder, phase, parsed.getName(), rules, List.copyOf(refused));
    }

    private WrittenFile at(String place) {
        return new WrittenFile(
                place,
                folder,
                phase,
                named,
                rules.stream().map(rule -> rule.at(place)).toList(),
                refused.stream()
                        .map(p -> new Problem(place, p.line(), p.field(), p.message(), p.remedy()))
                        .toList());
    }
}
