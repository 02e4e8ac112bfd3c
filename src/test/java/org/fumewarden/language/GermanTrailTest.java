package org.fumewarden.language;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.fumewarden.advice.Advisor;
import org.fumewarden.advice.Bench;
import org.fumewarden.engine.RuleBase;
import org.fumewarden.report.html.Speech;
import org.fumewarden.report.html.Words;
import org.fumewarden.trail.Premise;
import org.fumewarden.trail.Step;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** No fact of a German trail keeps an English word. The English trail of the same task tells which words are English. */
final class GermanTrailTest {
    /** Words that both languages write alike. */
    private static final Set<String> BOTH =
            Set.of("in", "an", "am", "was", "mg", "ppm", "min", "mol", "as", "mm", "en", "niosh", "qualitative");

    /** What people typed, and citations of a second document. */
    private static final String AS_IT_IS =
            "; (another document gives|ein anderes Dokument nennt) .*|, shielding gas .*|[a-z0-9]+([-#/.][a-z0-9]+)+";

    static List<Path> tasks() {
        return Written.tours(3);
    }

    @ParameterizedTest
    @MethodSource("tasks")
    void noFactKeepsAnEnglishWord(Path task) {
        Set<String> left = new TreeSet<>();
        for (String code : List.of("gb", "us", "de", "au", "nz", "fi", "it", "se")) {
            Bench english = bench(task, code, "en");
            Speech speech =
                    Speech.of(Words.in("de"), RuleBase.shipped(code).book().vocabulary());
            List<Step> before = english.advise().trail().steps();
            List<Step> after = bench(task, code, "de").advise().trail().steps();
            for (int i = 0; i < before.size(); i++) {
                List<Premise> told = sorted(before.get(i));
                List<Premise> said = sorted(after.get(i));
                for (int j = 0; j < told.size(); j++) {
                    String own = said.get(j).kind().equals("step")
                            ? ""
                            : speech.told(said.get(j).words());
                    Set<String> same = tokens(told.get(j).words());
                    same.retainAll(tokens(own));
                    same.removeAll(BOTH);
                    if (!same.isEmpty()) {
                        left.add(told.get(j).words() + " | " + own);
                    }
                }
            }
        }
        assertEquals("", String.join("\n", left));
    }

    private static List<Premise> sorted(Step step) {
        return step.premises().stream()
                .sorted(java.util.Comparator.comparing(Premise::kind).thenComparing(Premise::address))
                .toList();
    }

    /** The words of a text in small letters, without ids. */
    private static Set<String> tokens(String text) {
        return Arrays.stream(text.replaceAll(AS_IT_IS, "").split("[^\\p{L}]+"))
                .filter(w -> w.matches("\\p{Ll}{2,}"))
                .collect(Collectors.toCollection(TreeSet::new));
    }

    private static Bench bench(Path task, String code, String language) {
        Words words = Words.in(language);
        return new Bench(task, Map.of(), Optional.of(code), Optional.empty(), Advisor::shipped)
                .speaking(words.language(), words.names());
    }
}
