package org.fumewarden.check;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.fumewarden.codes.Located;
import org.fumewarden.codes.Problem;
import org.fumewarden.codes.ProgramFile;
import org.fumewarden.codes.YamlFiles;
import org.fumewarden.engine.WrittenRule;

/** Rules that close a class, and the mistake of the training room that each answers: a wrong answer is never marked without a word. */
final class MistakesNamed {
    private static final String FILE = "src/main/resources/org/fumewarden/training/mistakes.yaml";
    private static final Set<String> CLOSING = Set.of("Bar", "Doubt");

    private MistakesNamed() {}

    /** The rules among some that no mistake names, and of all rules the names that no rule has. */
    static List<Problem> check(List<WrittenRule> some, List<WrittenRule> all) {
        Located list = YamlFiles.parse(
                FILE, ProgramFile.text(MistakesNamed.class, FILE.substring("src/main/resources".length())));
        Set<String> gone = new TreeSet<>();
        list.items().stream()
                .flatMap(mistake -> Stream.ofNullable(mistake.entries().get("rules")))
                .forEach(rules -> gone.addAll(rules.words()));
        Stream<Problem> unnamed = closing(some)
                .filter(rule -> !gone.contains(rule.id()))
                .map(rule -> rule.problem(
                        "closes a class, and no mistake of the training room names it.",
                        "add its id under rules: of the mistake that it answers, in " + FILE + "."));
        List<Problem> problems = unnamed.toList();
        closing(all).forEach(rule -> gone.remove(rule.id()));
        return Stream.concat(
                        problems.stream(),
                        gone.stream()
                                .map(id -> new Problem(
                                        FILE, 0, id, "is not a rule that closes a class.", "drop it here.")))
                .toList();
    }

    private static Stream<WrittenRule> closing(List<WrittenRule> rules) {
        return rules.stream()
                .filter(rule -> rule.concludes().filter(CLOSING::contains).isPresent());
    }
}
