package org.fumewarden.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.time.Duration;
import java.time.LocalDate;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.By;

/** A slow or dead server is said, loses nothing that was typed, and hostile text stays text. */
class NothingIsLostTest {
    private static final String HOSTILE =
            "<img src=x onerror=window.hacked=1>\"'><script>window.hacked=1</script>{{7*7}}${7*7}javascript:alert(1)";

    private static Browser browser;
    private WebServer server;

    @BeforeAll
    static void startBrowser() {
        browser = Browser.shared();
    }

    @BeforeEach
    void start() throws IOException {
        server = start(0);
        browser.size(1280, 1000);
        browser.show(server, "describe", "bench-stainless");
        browser.run("document.querySelector('#head').open = true");
    }

    @AfterEach
    void stop() {
        server.close();
    }

    private static WebServer start(int port) throws IOException {
        return WebServer.start(port, Library.shipped(() -> LocalDate.of(2026, 3, 2)), Duration.ofSeconds(60));
    }

    @Test
    @Tag("ci")
    void aDeadServerIsSaidAndWhatWasTypedComesBackToLife() throws IOException {
        int port = server.listening().getPort();
        server.close();
        browser.tabTo("#title");
        browser.typeOver("Hatch of the tug");
        browser.untilText(".notice", "does not answer");
        browser.untilText("#stale", "Do not act on the old one");
        browser.screen("dead-server");
        assertEquals("Hatch of the tug", browser.find("#title").getDomProperty("value"));
        server = start(port);
        browser.untilText(".notice", "Open the new link");
        browser.open(server.address().toString());
        browser.untilText(".answer-now", "TH3 P");
        assertEquals("Hatch of the tug", browser.find("#title").getDomProperty("value"));
    }

    @Test
    @Tag("ci")
    void aSlowServerIsSaid() {
        browser.driver().executeCdpCommand("Network.enable", Map.of());
        latency(4000);
        browser.tabTo("#title");
        browser.typeOver("Slow water");
        browser.untilText(".notice", "is slow");
        latency(0);
        browser.until(() -> !browser.text(".notice").contains("is slow"), "the notice goes");
        assertEquals("Slow water", browser.find("#title").getDomProperty("value"));
    }

    @Test
    @Tag("ci")
    void whileItIsDecidedAgainTheLastAnswerKeepsItsPlaceUnderWordsThatSaySo() {
        browser.run("scrollTo(0, 0)");
        Object before = browser.run(PLACES);
        browser.driver().executeCdpCommand("Network.enable", Map.of());
        latency(1200);
        browser.run("document.querySelector(\"[data-path='task.place'] input\").click()");
        browser.untilText(".beside .deciding", "Do not act on the old answer");
        assertEquals(before, browser.run(PLACES));
        browser.screen("decided-again");
        latency(0);
        browser.until(() -> browser.text(".beside .deciding").isEmpty(), "decided");
    }

    /** Where the steps and the answer stand, and the counts of open questions. */
    private static final String PLACES = """
            return ['.steps', '#step', '.answer-now .plate'].map(s => Math.round(document.querySelector(s).getBoundingClientRect().top + scrollY)).join(' ')
              + document.querySelector('.steps').textContent;
            """;

    private static void latency(int milliseconds) {
        browser.driver()
                .executeCdpCommand(
                        "Network.emulateNetworkConditions",
                        Map.of(
                                "offline",
                                false,
                                "latency",
                                milliseconds,
                                "downloadThroughput",
                                -1,
                                "uploadThroughput",
                                -1));
    }

    @Test
    @Tag("ci")
    void hostileTextInEveryFieldStaysText() {
        browser.run("""
                const hostile = arguments[0];
                const task = { title: '', code: 'gb', on: '2026-03-02', task: {}, atmosphere: {}, wearer: {}, kit: {} };
                task.title = hostile;
                task.because = hostile;
                task.exposures = [{ agent: 'manganese-respirable', twa: '0.12 mg/m3' }, { agent: 'carbon-monoxide', judged: 'below-limit', because: hostile }];
                localStorage.clear();
                sessionStorage.clear();
                localStorage.setItem('fumewarden.task', JSON.stringify(task));
                """, HOSTILE);
        browser.driver().navigate().refresh();
        for (String place : new String[] {"advice", "try", "trail", "drill", "describe"}) {
            browser.run("location.hash = arguments[0]", place);
            browser.until(() -> browser.find("#" + place).isDisplayed(), place);
            harmless();
        }
        browser.run("location.hash = 'advice'");
        browser.until(
                () -> browser.run("return document.querySelector('.sheet')?.shadowRoot?.textContent ?? ''")
                        .toString()
                        .contains("<img src=x onerror"),
                "text");
        assertEquals(
                0L,
                browser.run(
                        "return document.querySelector('.sheet').shadowRoot.querySelectorAll('img, script').length"));
        browser.run("document.querySelectorAll('#advice details').forEach(d => { d.open = true; })");
        harmless();
    }

    @Test
    void hostileAnswersAreFaultsInWords() {
        browser.run("""
                const hostile = arguments[0];
                localStorage.clear();
                sessionStorage.clear();
                localStorage.setItem('fumewarden.task', JSON.stringify({ title: hostile, code: 'gb', on: hostile, [hostile]: hostile,
                  task: { process: hostile, place: hostile, 'wear-time': hostile }, atmosphere: { oxygen: hostile, explosive: hostile },
                  exposures: [{ agent: hostile, twa: hostile }, { agent: 'ozone', stel: hostile, samples: [hostile], judged: hostile }],
                  wearer: { 'facial-hair': hostile } }));
                """, HOSTILE);
        browser.driver().navigate().refresh();
        browser.untilText("#faults", "<img src=x");
        assertTrue(
                browser.driver().findElements(By.cssSelector(".row.wrong")).size() >= 2, "faults stand beside fields");
        browser.screen("faults");
        harmless();
    }

    private static void harmless() {
        assertNull(browser.run("return window.hacked"));
        assertEquals(0L, browser.run("return document.querySelectorAll('img[src=x], #page script').length"));
    }
}
