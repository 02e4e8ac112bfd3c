package org.fumewarden.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.fumewarden.codes.CodeBook;
import org.fumewarden.codes.RuleFolder;
import org.fumewarden.engine.Phase;
import org.fumewarden.report.html.Words;
import org.junit.jupiter.api.Test;

/** The page speaks through the bundle alone. */
class BundleTest {
    private static final Path PAGE = Path.of("src/main/resources/org/fumewarden/web");
    private static final Pattern KEY = Pattern.compile("(?:say|speak)\\('([a-z][a-zA-Z.-]*)'");

    @Test
    void everyKeyThatThePageUsesIsInTheBundle() throws IOException {
        Map<String, String> words = Words.in("en").all();
        Set<String> missing = new TreeSet<>();
        try (Stream<Path> files = Files.list(PAGE)) {
            for (Path file : files.filter(f -> f.toString().endsWith(".js")).toList()) {
                Matcher key = KEY.matcher(Files.readString(file));
                while (key.find()) {
                    if (!words.containsKey(key.group(1))) {
                        missing.add(file.getFileName() + ": " + key.group(1));
                    }
                }
            }
        }
        assertEquals(Set.of(), missing);
    }

    /** Headings whose keys the page puts together from ids. */
    @Test
    void everyPhaseOfTheTrailHasAHeadingInEachLanguage() {
        for (String language : Words.LANGUAGES) {
            Map<String, String> words = Words.in(language).all();
            for (Phase phase : Phase.values()) {
                assertTrue(words.containsKey("phase." + phase.key()), language + " lacks phase." + phase.key());
            }
        }
    }

    @Test
    void noModuleWritesMarkupFromText() throws IOException {
        try (Stream<Path> files = Files.list(PAGE)) {
            for (Path file : files.filter(f -> f.toString().endsWith(".js")).toList()) {
                String text = Files.readString(file);
                for (String risky : new String[] {
                    "innerHTML",
                    "outerHTML",
                    "insertAdjacentHTML",
                    "document.write",
                    "eval(",
                    "new Function",
                    "setAttribute('style"
                }) {
                    assertFalse(text.contains(risky), file + " uses " + risky);
                }
            }
        }
    }

    @Test
    void everyShippedPageFileIsServed() throws IOException {
        PageFiles served = new PageFiles();
        try (Stream<Path> files = Files.list(PAGE)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                assertFalse(served.find("/" + file.getFileName()).isEmpty(), file + " is not served");
            }
        }
    }

    /** A name for an id that is gone would mislead nobody but rot; an id without a name is shown in English. */
    @Test
    void germanNamesCoverTheCataloguesOfTheFormAndNothingElse() {
        var vocabulary = CodeBook.read(RuleFolder.shipped(), "gb").vocabulary();
        Set<String> wanted = new TreeSet<>();
        vocabulary.agents().forEach(id -> wanted.add("agent." + id));
        vocabulary.questions().stream()
                .filter(q ->
                        Set.of("process", "base-metal", "coating", "filler").contains(q.id()))
                .forEach(q -> vocabulary.choices(q).keySet().forEach(id -> wanted.add("choice." + q.id() + "." + id)));
        Set<String> named = new TreeSet<>(Words.in("de").named());
        assertTrue(named.containsAll(wanted), wanted.toString());
        named.removeAll(wanted);
        vocabulary.catalogues().get("subjects").keySet().forEach(id -> named.remove("agent." + id));
        named.remove("agent.irritants-of-the-airways"); // A sum, whose id says its English name.
        assertTrue(
                named.stream()
                        .allMatch(n -> n.matches("(act|check|code|device|who|choice\\.particle-(filters|marks))\\..*")),
                named.toString());
        assertEquals("Ozon", Words.in("de").sayOr("agent.ozone", "ozone"));
        assertEquals("ozone", Words.in("en").sayOr("agent.ozone", "ozone"));
    }
}
