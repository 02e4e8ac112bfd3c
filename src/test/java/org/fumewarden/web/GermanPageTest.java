package org.fumewarden.web;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.openqa.selenium.Keys;

/**
 * The page in German has no English sentence, figure or country of its own. Sentences of rules are left out here: the check of the
 * rule base counts those that lack a translation, and the page marks them as English.
 */
class GermanPageTest {
    /** Small words that are English and nothing else; a sentence hardly does without one. */
    private static final String ENGLISH =
            "the|of|and|is|are|not|with|for|this|that|from|what|which|whether|unknown|yes|due|only";

    /** What the people of the tasks typed themselves. */
    private static final List<String> TYPED =
            List.of("Galvanised quay rail, stick electrode, in the open", "A. Hygienist of the yard");

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
            const found = [];
            const english = new RegExp(`(^|[^\\\\p{L}])(${arguments[0]})([^\\\\p{L}]|$)|[0-9][.][0-9]+ (mg|ppm|min|h|L)|Great Britain`, 'u');
            for (const root of [document.body, document.querySelector('.sheet')?.shadowRoot].filter(Boolean)) {
              const walk = document.createTreeWalker(root, NodeFilter.SHOW_TEXT);
              while (walk.nextNode()) {
                const node = walk.currentNode;
                const holder = node.parentElement;
                if (!holder || holder.closest('[lang="en"], .of-rules, code, .cite, .items, .code, option[lang], script, noscript, style') || !english.test(arguments[1].reduce((text, typed) => text.replace(typed, ''), node.data))) continue;
                found.push(node.data);
              }
            }
            return found.slice(0, 12).join('\\n');
            """;

    @ParameterizedTest
    @ValueSource(strings = {"describe", "advice", "try", "trail", "upkeep", "drill"})
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
        if (place.equals("drill")) {
            browser.push("#begin-round", "");
            browser.find("form .choice input").click();
            browser.push("#drill form button[type=submit]", "");
            browser.find(".told");
        }
        if (place.equals("advice")) {
            browser.until(
                    () -> (Boolean) browser.run("return Boolean(document.querySelector('.sheet')?.shadowRoot)"),
                    "sheet");
        }
        browser.screen(place + "-de");
        assertEquals("", browser.run(FOUND, ENGLISH, TYPED));
    }

    @Test
    @Tag("ci")
    void noStepAndNoFaultOfTheDescriptionIsEnglish() {
        browser.show(server, "describe", "galvanised-rail", "de");
        Number steps = (Number) browser.run("return document.querySelectorAll('.steps button').length");
        for (int i = 0; i < steps.intValue(); i++) {
            browser.run(
                    "document.querySelectorAll('.steps button')[arguments[0]].click();"
                            + "document.querySelectorAll('#describe details').forEach(d => { d.open = true; })",
                    i);
            browser.until(
                    () -> (Boolean)
                            browser.run(
                                    "return [...document.querySelectorAll('.asking > details.more')].every(d => d.childElementCount > 1)"),
                    "opened");
            assertEquals("", browser.run(FOUND, ENGLISH, TYPED));
        }
        browser.run("document.querySelectorAll('.steps button')[1].click()");
        browser.run("document.querySelector(\"[data-path='atmosphere.oxygen'] input\").focus()");
        browser.typeOver("120");
        browser.untilText("#faults", "100");
        assertEquals("", browser.run(FOUND, ENGLISH, TYPED));
    }

    @Test
    @Tag("ci")
    void theRoomSpeaksGerman() {
        browser.show(server, "drill", "", "de");
        browser.push("#begin-room", "");
        for (int i = 0; i < 11; i++) {
            assertEquals("", browser.run(FOUND, ENGLISH, TYPED));
            browser.push("#room-next", "");
        }
        browser.press(Keys.ESCAPE);
    }
}
