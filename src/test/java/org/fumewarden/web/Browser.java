package org.fumewarden.web;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.function.BooleanSupplier;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.fumewarden.task.TaskTree;
import org.junit.jupiter.api.Assumptions;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;
import org.openqa.selenium.interactions.Actions;

/** A real headless Chromium, as Debian packages it, driven over WebDriver. */
final class Browser {
    private static final Path CHROMIUM = Path.of("/usr/bin/chromium");
    private static final Path DRIVER = Path.of("/usr/bin/chromedriver");
    private static final Path SCREENS = Path.of("target", "screens");
    /** Selenium warns that it has no library for the newest developer protocol, which these tests do not use. */
    private static final Logger LOG = Logger.getLogger("org.openqa.selenium");

    private static final Duration PATIENCE = Duration.ofSeconds(40);

    private static Browser shared;

    private final ChromeDriver driver;

    private Browser(ChromeDriver driver) {
        this.driver = driver;
    }

    /** The one of this process, as new; its page is yours until the next test class asks for it. */
    static synchronized Browser shared() {
        if (shared == null) {
            shared = start();
            Runtime.getRuntime().addShutdownHook(new Thread(shared.driver::quit));
        }
        shared.size(1280, 1000);
        shared.prefers("light", false);
        return shared;
    }

    /** Starts one, or skips the test aloud where there is none; on the build server a missing browser is a failure. */
    private static Browser start() {
        boolean there = Files.isExecutable(CHROMIUM) && Files.isExecutable(DRIVER);
        if (!there && System.getenv("CI") != null) {
            throw new IllegalStateException(
                    "No /usr/bin/chromium and chromedriver: install chromium, chromium-driver.");
        }
        if (!there) {
            System.err.println("BROWSER TESTS SKIPPED: install the Debian packages chromium and chromium-driver.");
        }
        Assumptions.assumeTrue(there, "no chromium");
        LOG.setLevel(Level.SEVERE);
        ChromeOptions options = new ChromeOptions();
        options.setBinary(CHROMIUM.toString());
        options.addArguments("--headless=new", "--no-sandbox", "--disable-dev-shm-usage", "--disable-gpu", "--lang=en");
        ChromeDriverService service = new ChromeDriverService.Builder()
                .usingDriverExecutable(DRIVER.toFile())
                .build();
        return new Browser(new ChromeDriver(service, options));
    }

    ChromeDriver driver() {
        return driver;
    }

    void open(String address) {
        driver.get(address);
    }

    void size(int width, int height) {
        driver.executeCdpCommand(
                "Emulation.setDeviceMetricsOverride",
                Map.of("width", width, "height", height, "deviceScaleFactor", 1, "mobile", false));
    }

    /** The page at a zoom in percent, in a window of this size in pixels of the screen. */
    void zoom(int width, int height, int percent) {
        size(width * 100 / percent, height * 100 / percent);
    }

    /** The few colours that a reader forces on every page. */
    void forcedColours(boolean forced) {
        driver.executeCdpCommand(
                "Emulation.setEmulatedMedia",
                Map.of("features", List.of(Map.of("name", "forced-colors", "value", forced ? "active" : "none"))));
    }

    /** Light or dark, and whether motion is unwelcome, as the system of the reader says. */
    void prefers(String scheme, boolean reducedMotion) {
        driver.executeCdpCommand(
                "Emulation.setEmulatedMedia",
                Map.of(
                        "features",
                        List.of(
                                Map.of("name", "prefers-color-scheme", "value", scheme),
                                Map.of(
                                        "name",
                                        "prefers-reduced-motion",
                                        "value",
                                        reducedMotion ? "reduce" : "no-preference"))));
    }

    /** Asks for these addresses fail from now on; without any, all are answered again. */
    void holdsBack(String... addresses) {
        driver.executeCdpCommand("Network.enable", Map.of());
        driver.executeCdpCommand("Network.setBlockedURLs", Map.of("urls", List.of(addresses)));
    }

    /** Opens a place of the page with nothing kept from before but one starting task, or none. */
    void show(WebServer server, String place, String start) {
        show(server, place, start, "en");
    }

    void show(WebServer server, String place, String start, String language) {
        driver.get(server.address().toString());
        run(
                "localStorage.clear(); sessionStorage.clear(); localStorage.setItem('fumewarden.language', JSON.stringify(arguments[0]))",
                language);
        if (!start.isEmpty()) {
            String task =
                    TaskText.tree(TaskTree.parse(start, Starts.text(start))).toString();
            run("localStorage.setItem('fumewarden.task', arguments[0])", task);
        }
        driver.get("about:blank");
        driver.get(server.address() + "#" + place);
        find("#" + place);
        if (!place.equals("upkeep")) {
            until(
                    () -> (Boolean)
                            run(
                                    "return Boolean(document.querySelector('.answer-now .plate .state') || document.querySelector('.faults a'))"),
                    "decided");
        }
    }

    /** Presses a thing that is shown, by its selector and how its words begin. */
    void push(String css, String words) {
        until(() -> (Boolean) run(PUSH, css, words), css + " " + words);
    }

    private static final String PUSH = """
            const found = [...document.querySelectorAll(arguments[0])].find(e => e.checkVisibility() && !e.disabled && e.textContent.trim().startsWith(arguments[1]));
            if (!found) return false;
            found.scrollIntoView({ block: 'center' });
            found.click();
            return true;
            """;

    WebElement find(String css) {
        until(() -> !driver.findElements(By.cssSelector(css)).isEmpty(), css);
        return driver.findElement(By.cssSelector(css));
    }

    /** All text that is shown. */
    String text(String css) {
        return find(css).getText();
    }

    void untilText(String css, String words) {
        until(
                () -> driver.findElements(By.cssSelector(css)).stream()
                        .anyMatch(e -> e.getText().contains(words)),
                css + " says " + words);
    }

    void until(BooleanSupplier holds, String what) {
        long end = System.nanoTime() + PATIENCE.toNanos();
        while (System.nanoTime() < end) {
            try {
                if (holds.getAsBoolean()) {
                    return;
                }
                Thread.sleep(50);
            } catch (org.openqa.selenium.StaleElementReferenceException e) {
                // The page was drawn anew between finding and reading: look again.
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
                throw new IllegalStateException(e);
            }
        }
        screen("failed");
        throw new AssertionError("never came: " + what);
    }

    void press(CharSequence... keys) {
        new Actions(driver).sendKeys(keys).perform();
    }

    /** Types over what the field holds. */
    void typeOver(String text) {
        new Actions(driver)
                .keyDown(Keys.CONTROL)
                .sendKeys("a")
                .keyUp(Keys.CONTROL)
                .sendKeys(text)
                .perform();
    }

    /** Presses Tab until the element with the focus fits, as a person without a mouse does. */
    void tabTo(String css) {
        for (int i = 0; i < 300; i++) {
            if (Boolean.TRUE.equals(driver.executeScript("return document.activeElement.matches(arguments[0])", css))) {
                return;
            }
            press(Keys.TAB);
        }
        screen("failed");
        throw new AssertionError("the keyboard does not reach " + css);
    }

    Object run(String script, Object... arguments) {
        return driver.executeScript(script, arguments);
    }

    void screen(String name) {
        try {
            Files.createDirectories(SCREENS);
            Files.write(SCREENS.resolve(name + ".png"), whole());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The page from top to bottom, at most a few screens of it. */
    private byte[] whole() {
        Number width = (Number) run("return innerWidth");
        Number height = (Number) run("return Math.min(document.documentElement.scrollHeight, 2600)");
        Map<String, Object> clip = Map.of("x", 0, "y", 0, "width", width, "height", height, "scale", 1);
        Map<String, Object> shot = driver.executeCdpCommand(
                "Page.captureScreenshot", Map.of("format", "png", "captureBeyondViewport", true, "clip", clip));
        return Base64.getDecoder().decode((String) shot.get("data"));
    }

    /** What axe-core finds wrong by WCAG 2.2 A and AA, one line each; empty when nothing. */
    List<String> violations() {
        return violations("wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice");
    }

    /** What axe-core finds wrong by some rules or sets of rules. */
    @SuppressWarnings("unchecked")
    List<String> violations(String... rules) {
        if (Boolean.TRUE.equals(run("return !window.axe"))) {
            run(axe());
        }
        return (List<String>) driver.executeAsyncScript("""
                const done = arguments[arguments.length - 1];
                axe.run(document, { runOnly: arguments[0] }).then(
                  found => done(found.violations.flatMap(v => v.nodes.map(n => v.id + ': ' + n.target + ' ' + n.failureSummary))),
                  fault => done(['axe failed: ' + fault]));
                """, List.of(rules));
    }

    private static String axe() {
        try (InputStream in = Browser.class.getResourceAsStream("/axe.min.js")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
