package org.fumewarden.web;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.Duration;
import org.junit.jupiter.api.BeforeAll;

/** What a test in a real browser begins with: one server of this process on the rules of 2 March 2026, and one browser. */
abstract class OnThePage {
    private static WebServer running;

    static WebServer server;
    static Browser browser;

    @BeforeAll
    static void begin() {
        server = running();
        browser = Browser.shared();
    }

    private static synchronized WebServer running() {
        if (running == null) {
            try {
                running = WebServer.start(0, Library.shipped(() -> Yard.TODAY), Duration.ofSeconds(60));
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
            Runtime.getRuntime().addShutdownHook(new Thread(running::close));
        }
        return running;
    }
}
