package org.fumewarden.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.fumewarden.task.TaskTree;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Plots, stretches of a shift, estimates and kept variants on the page. */
@Tag("ci")
class DrawnTaskTest extends OnThePage {
    private static void show(String place, String tour, String more, String language) throws IOException {
        Path file = Path.of("scenarios/tours/" + tour + ".yaml");
        ObjectNode tree = (ObjectNode) TaskText.tree(TaskTree.read(file));
        tree.remove("expect");
        if (!more.isEmpty()) {
            tree.set("variants", TaskText.tree(TaskTree.parse("variants", more)));
        }
        String task = tree.toString();
        browser.size(1280, 1000);
        browser.open(server.address().toString());
        browser.run(
                "localStorage.clear(); sessionStorage.clear(); localStorage.setItem('fumewarden.task', arguments[0]); localStorage.setItem('fumewarden.language', arguments[1])",
                task,
                "\"" + language + "\"");
        browser.open(server.address() + "#" + place);
        browser.driver().navigate().refresh();
        if (place.equals("advice")) {
            browser.find(".why");
            browser.run("document.querySelector('.why').open = true");
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"light", "dark"})
    void theSamplesAreDrawnWithTheirNumbersAndWords(String theme) throws IOException {
        browser.prefers(theme, true);
        show("advice", "stainless-brackets", "", "en");
        browser.find(".drawing svg desc");
        String said = browser.text(".drawing");
        assertTrue(said.contains("with an assumed spread \u25C0 governs"), said);
        assertTrue(said.contains("the geometric standard deviation 1.7"), said);
        browser.screen("drawn-" + theme);
        assertEquals(List.of(), browser.violations());
        browser.size(360, 800);
        assertTrue(((Number) browser.run("return document.documentElement.scrollWidth")).intValue() <= 360);
    }

    /** What stands on the page while the server is slow, and stays when it does not answer. */
    @ParameterizedTest
    @ValueSource(strings = {"light", "dark"})
    void theAnswerShownBeforeTheSheetComesCanBeRead(String theme) throws IOException {
        browser.prefers(theme, true);
        browser.holdsBack("*/api/sheet");
        try {
            show("advice", "stainless-brackets", "", "en");
            browser.find(".sheet > .plate .state");
            assertEquals(List.of(), browser.violations());
        } finally {
            browser.holdsBack();
        }
    }

    @Test
    void theUnitInUseIsDrawnOverItsShift() throws IOException {
        show("advice", "shift-that-lasts", "", "de");
        browser.find(".drawing svg title");
        browser.screen("drawn-unit");
        assertTrue(browser.text("#advice").contains("Gezeichnet"));
    }

    @Test
    void stretchesOfAShiftAreTypedAndCounted() throws IOException {
        show("describe", "stainless-brackets", "", "de");
        browser.untilText(".answer-now", "TH3 P");
        browser.push(".steps button", "Was gemessen wurde");
        browser.find("fieldset.agent details > summary");
        browser.run("document.querySelectorAll('details').forEach(d => { d.open = true; })");
        browser.screen("measured-de");
        assertEquals(List.of(), browser.violations());
        assertTrue(browser.text("fieldset.agent").contains("Abschnitte einer Schicht"));
    }

    /** 12 mg/m3 of manganese against the EH40/2005 limit of 0.05 mg/m3 needs 240. */
    @Test
    void aVariantOfTheFileIsTriedByOneButton() throws IOException {
        show(
                "try",
                "stainless-brackets",
                "a lot of manganese:\n  exposures.manganese-respirable.twa: 12 mg/m3\n",
                "en");
        browser.untilText("#try", "a lot of manganese");
        browser.run(
                "[...document.querySelectorAll('#try button')].find(b => b.textContent.includes('a lot of')).click()");
        browser.untilText("#try .both", "240 (manganese, respirable)");
    }

    @Test
    void aFileWithNotesSaysThatTheyAreNotKept() {
        assertTrue(TaskText.hasComments("title: x # why\ncode: gb\n"));
        assertTrue(TaskText.hasComments("# why\ntitle: x\n"));
        assertEquals(false, TaskText.hasComments("title: '# x'\n\ncode: gb\n"));
    }
}
