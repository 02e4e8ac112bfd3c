package org.fumewarden.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.time.Duration;
import java.time.LocalDate;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.WindowType;

/** Nothing typed is lost: what was replaced comes back on one press, tasks are kept by name, two tabs keep two versions. */
@Tag("ci")
class KeptTasksTest extends OnThePage {
    private static void rename(String title) {
        browser.run(
                "document.querySelector('#head').open = true; const t = document.querySelector('#title'); t.value = arguments[0];"
                        + "t.dispatchEvent(new Event('input', { bubbles: true }))",
                title);
    }

    private static Object kept() {
        return browser.run("return Object.keys(localStorage).filter(k => k.startsWith('fumewarden.task.'))"
                + ".map(k => JSON.parse(localStorage[k]).task.title).sort().join('|')");
    }

    @Test
    void beginningAnotherTaskIsTakenBackOnOnePress() {
        browser.show(server, "describe", "bench-stainless");
        rename("Hatch of the tug");
        browser.run("document.querySelector('.starts').open = true; document.querySelector('#begin').click()");
        browser.untilText(".undo", "Begun: an empty task");
        browser.untilText("#head", "Task without a name");
        browser.push(".undo button", "Undo");
        browser.untilText("#head", "Hatch of the tug");
        browser.untilText("#heard", "20 (welding fume)");
    }

    @Test
    void severalTasksAreKeptByNameAndOpenAgain() {
        browser.show(server, "describe", "bench-stainless");
        rename("Hatch of the tug");
        browser.run(
                "document.querySelector('.starts').open = true; document.querySelector('#start').value = 'galvanised-rail'; document.querySelector('#begin').click()");
        browser.untilText("#head", "Galvanised rail outdoors");
        rename("Rail of the quay");
        assertEquals("Hatch of the tug|Rail of the quay", kept());
        browser.run(
                "document.querySelector('.starts').open = true; document.querySelector('.starts .more').open = true");
        browser.push(".kept li button", "Hatch of the tug");
        browser.untilText("#head", "Hatch of the tug");
        browser.driver().navigate().refresh();
        browser.untilText("#head", "Hatch of the tug");
    }

    @Test
    void aChangeMadePartOfTheTaskIsTakenBack() {
        browser.show(server, "try", "bench-stainless");
        browser.push(".levers button", "");
        browser.push("#try .tools button", "Make this the task");
        browser.untilText(".undo", "part of the task");
        Object changed = kept();
        assertTrue(changed.toString().length() > 3);
        Object before = browser.run(
                "return JSON.stringify(JSON.parse(localStorage[Object.keys(localStorage).find(k => k.startsWith('fumewarden.task.'))]).task)");
        browser.push(".undo button", "Undo");
        browser.until(
                () -> !before.equals(
                        browser.run(
                                "return JSON.stringify(JSON.parse(localStorage[Object.keys(localStorage).find(k => k.startsWith('fumewarden.task.'))]).task)")),
                "taken back");
    }

    @Test
    void twoTabsKeepTwoVersions() {
        browser.show(server, "describe", "bench-stainless");
        rename("One");
        String first = browser.driver().getWindowHandle();
        browser.driver().switchTo().newWindow(WindowType.TAB);
        browser.open(server.address() + "#describe");
        browser.untilText("#head", "One");
        rename("Two");
        String second = browser.driver().getWindowHandle();
        browser.driver().switchTo().window(first);
        browser.untilText(".notice", "another tab");
        rename("One again");
        browser.until(() -> kept().toString().contains("One again"), "kept");
        assertEquals("One again|Two", kept());
        browser.driver().switchTo().window(second);
        assertEquals("Two", browser.find("#title").getDomProperty("value"));
        browser.driver().close();
        browser.driver().switchTo().window(first);
    }

    @Test
    void aServerStartedAgainAsksForItsNewLink() throws IOException {
        WebServer other = WebServer.start(0, Library.shipped(() -> LocalDate.of(2026, 3, 2)), Duration.ofSeconds(60));
        int port = other.listening().getPort();
        browser.show(other, "describe", "bench-stainless");
        other.close();
        try (WebServer again =
                WebServer.start(port, Library.shipped(() -> LocalDate.of(2026, 3, 2)), Duration.ofSeconds(60))) {
            rename("Typed meanwhile");
            browser.untilText(".notice", "Open the new link");
            browser.open(again.address().toString());
            browser.untilText("#head", "Typed meanwhile");
        }
    }
}
