package org.fumewarden.web;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Optional;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The page in German has no English sentence of its own. Sentences of rules are left out here: the check of the rule base counts
 * those that lack a translation, and the page marks them as English.
 */
class GermanPageTest {
    /** Small words that are English and nothing else; a sentence hardly does without one. */
    private static final String ENGLISH =
            "the|of|and|is|are|not|with|for|this|that|from|what|which|whether|unknown|yes|due|only";

    @TempDir
    static Path folder;

    private static WebServer server;
    private static Browser browser;

    @BeforeAll
    static void start() throws IOException {
        Workshop yard = Yard.in(folder);
        Yard.more(yard);
        server = WebServer.start(0, Library.shipped(() -> Yard.TODAY), Optional.of(yard), Duration.ofSeconds(60));
        browser = Browser.shared();
        browser.size(1280, 1000);
    }

    @AfterAll
    static void stop() {
        server.close();
    }

    /** Every text that is shown, outside what is marked as English and outside what people typed. */
    private static final String FOUND = """
            const walk = document.createTreeWalker(document.getElementById('page'), NodeFilter.SHOW_TEXT);
            const found = [];
            const english = new RegExp(`(^|[^\\\\p{L}])(${arguments[0]})([^\\\\p{L}]|$)`, 'u');
            while (walk.nextNode()) {
              const node = walk.currentNode;
              const holder = node.parentElement;
              if (holder.closest('[lang="en"], .of-rules, code, .cite, .items, .code, option[lang]') || !english.test(node.data)) continue;
              found.push(node.data);
            }
            return found.slice(0, 12).join('\\n');
            """;

    @ParameterizedTest
    @ValueSource(strings = {"describe", "advice", "try", "trail", "upkeep"})
    @Tag("ci")
    void noEnglishSentenceIsShown(String place) {
        browser.show(server, place, place.equals("describe") ? "" : "bench-stainless", "de");
        browser.run("document.querySelectorAll('details').forEach(d => { d.open = true; })");
        if (place.equals("upkeep")) {
            browser.find(".scan");
            browser.run(
                    "document.querySelector('.scan').value = 'U-014'; document.querySelector('.scan-box button').click()");
            browser.find(".three button");
            browser.push(".three button", "Pr\u00fcfung vor Gebrauch");
        }
        if (place.equals("try")) {
            browser.find(".levers button");
        }
        browser.screen(place + "-de");
        assertEquals("", browser.run(FOUND, ENGLISH));
    }
}
