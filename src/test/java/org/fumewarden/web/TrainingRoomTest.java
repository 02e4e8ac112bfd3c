package org.fumewarden.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;

/** The training room in a real browser: a trainer at a projector, and one person with a phone. */
class TrainingRoomTest extends OnThePage {
    private static void open(int width, int height, String topic) {
        browser.size(width, height);
        browser.prefers("light", true);
        browser.open(server.address() + "#drill");
        browser.run("localStorage.clear()");
        browser.driver().navigate().refresh();
        browser.find("#round");
        browser.run("document.querySelector('#round').value = arguments[0]", topic);
    }

    private static void noSidewaysScroll() {
        Number wide = (Number) browser.run("return document.documentElement.scrollWidth - innerWidth");
        assertTrue(wide.intValue() <= 0, "the page scrolls sideways by " + wide);
    }

    @Test
    @Tag("ci")
    void aTrainerCountsHandsOnTheNumberKeysAndSeesWhatTheRoomGotWrong() {
        open(1280, 720, "fit");
        browser.tabTo("#begin-room");
        browser.press(Keys.ENTER);
        browser.find(".room .tale");
        browser.screen("room-opening");
        for (int question = 1; question <= 5; question++) {
            browser.tabTo("#room-next");
            browser.press(Keys.ENTER);
            browser.untilText(".room h2", question + ". ");
            assertTrue(
                    Boolean.TRUE.equals(browser.run(
                            "const r = document.querySelector('.room'); return r.scrollHeight <= r.clientHeight + 1")),
                    "question " + question + " does not fit the projector");
            browser.press("1", "1", "2", "3", "3", Keys.BACK_SPACE);
            assertEquals("2", browser.text(".room .answers li:nth-child(1) .counted"));
            assertEquals("1", browser.text(".room .answers li:nth-child(3) .counted"));
            browser.screen("room-question-" + question);
            browser.tabTo("#room-next");
            browser.press(Keys.ENTER);
            browser.find(".room .answers li.right");
            assertEquals(
                    1,
                    browser.driver()
                            .findElements(By.cssSelector(".room .answers li.right"))
                            .size());
            browser.screen("room-answer-" + question);
        }
        assertEquals(List.of(), browser.violations());
        browser.tabTo("#room-next");
        browser.press(Keys.ENTER);
        browser.untilText(".room h2", "What the room got wrong most");
        assertEquals(
                5,
                browser.driver().findElements(By.cssSelector(".room .most li")).size());
        browser.untilText(".room", "decide");
        browser.screen("room-result");
        browser.press(Keys.ESCAPE);
        browser.until(
                () -> browser.driver().findElements(By.cssSelector(".room")).isEmpty(), "the room is left");
        assertEquals("begin-room", browser.run("return document.activeElement.id"), "the focus comes back");
    }

    @Test
    @Tag("ci")
    void onePersonWithAPhoneAnswersStopsAndGoesOn() {
        open(390, 844, "gas");
        browser.find("#begin-round").click();
        browser.find("form.round, form .choice input");
        noSidewaysScroll();
        browser.screen("phone-question");
        browser.find("form .own input").sendKeys("banana");
        browser.find("form button[type=submit]").click();
        browser.untilText(".training", "Answer with");
        browser.find("form .own input").clear();
        browser.find("form .choice input").click();
        browser.find("form button[type=submit]").click();
        browser.find(".told");
        browser.screen("phone-marked");
        noSidewaysScroll();
        browser.driver().navigate().refresh();
        browser.find("#go-on").click();
        browser.untilText(".asked-now legend", "Question 2 of 5");
        for (int question = 2; question <= 5; question++) {
            browser.untilText(".asked-now legend", "Question " + question);
            browser.run("document.querySelectorAll('.training form button')[2].click()");
            browser.find(".told");
            browser.run("document.querySelector('.told + button').click()");
        }
        browser.untilText(".training", "of 5 right");
        browser.screen("phone-end");
        noSidewaysScroll();
        assertEquals(List.of(), browser.violations());
    }

    @Test
    @Tag("long")
    void theRoomSpeaksGermanOnAPhoneAsWell() {
        open(390, 844, "before-use-powered-hood");
        browser.run(
                "const l = document.querySelector('#language'); l.value = 'de'; l.dispatchEvent(new Event('change'))");
        browser.untilText("#drill", "Mit dem Raum beginnen");
        browser.run("document.querySelector('#round').value = 'before-use-powered-hood'");
        browser.find("#begin-room").click();
        browser.find(".room .tale");
        browser.find("#room-next").click();
        browser.untilText(".room h2", "Welche Prüfung kommt als Nächstes?");
        browser.find(".room .answers button").click();
        assertEquals("1", browser.text(".room .answers li:nth-child(1) .counted"));
        browser.screen("room-phone-german");
        noSidewaysScroll();
        assertFalse(browser.text(".room").contains("ui.training"), "every word is there");
        browser.find("#room-leave").click();
    }
}
