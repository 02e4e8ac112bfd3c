package org.fumewarden.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.net.InetAddress;
import java.net.NetworkInterface;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.LocalDate;
import java.util.Collections;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What the server lets in and keeps out, asked over a plain socket so that no client library tidies the request. */
class GuardedServerTest {
    private static WebServer server;
    private static int port;
    private static String secret;

    @BeforeAll
    static void start() throws IOException {
        server = WebServer.start(0, Library.shipped(() -> LocalDate.of(2026, 3, 2)), Duration.ofSeconds(20));
        port = server.listening().getPort();
        secret = server.address().getPath().replaceAll("/$", "");
    }

    @AfterAll
    static void stop() {
        server.close();
    }

    @Test
    void itListensOnTheLoopbackAddressAndNoOther() throws IOException {
        assertTrue(server.listening().getAddress().isLoopbackAddress());
        for (NetworkInterface each : Collections.list(NetworkInterface.getNetworkInterfaces())) {
            for (InetAddress address : Collections.list(each.getInetAddresses())) {
                if (!address.isLoopbackAddress() && !address.isLinkLocalAddress()) {
                    assertFalse(connects(address), "reached by " + address);
                }
            }
        }
    }

    private static boolean connects(InetAddress address) {
        try (Socket socket = new Socket()) {
            socket.connect(new java.net.InetSocketAddress(address, port), 500);
            return true;
        } catch (IOException e) {
            return false;
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"tarn-haven.example", "127.0.0.1", "127.0.0.1:1", "localhost.example:80", "x.example:OURS"})
    void aForeignHostIsRefused(String host) throws IOException {
        String named = host.replace("OURS", "" + port);
        assertEquals(403, status("GET " + secret + "/ HTTP/1.1\r\nHost: " + named + "\r\nConnection: close\r\n\r\n"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"http://tarn-haven.example", "null", "https://localhost", "http://127.0.0.1:1"})
    void aForeignOriginIsRefused(String origin) throws IOException {
        assertEquals(403, status(post("/api/codes", "Origin: " + origin + "\r\n", "{}")));
    }

    @Test
    void aRequestThatAnotherSiteCausedIsRefused() throws IOException {
        assertEquals(403, status(post("/api/codes", "Sec-Fetch-Site: cross-site\r\n", "{}")));
    }

    @Test
    void ourOwnPageIsLetIn() throws IOException {
        String own = "Origin: http://127.0.0.1:" + port + "\r\nSec-Fetch-Site: same-origin\r\n";
        assertEquals(200, status(post("/api/codes", own, "{}")));
    }

    /** Another account of the machine reaches the port as well; it does not know the secret. */
    @ParameterizedTest
    @ValueSource(
            strings = {"/", "/index.html", "/api/codes", "/paper/due", "/x/", "/AAAAAAAAAAAAAAAAAAAAAAAA/api/codes"})
    void withoutTheSecretNothingAnswers(String path) throws IOException {
        String host = " HTTP/1.1\r\nHost: 127.0.0.1:" + port + "\r\nConnection: close\r\n\r\n";
        for (String request : List.of("GET " + path + host, "GET " + secret + host)) {
            String reply = exchange(request);
            assertTrue(reply.startsWith("HTTP/1.1 403"), reply);
            assertFalse(reply.contains(secret.substring(1)), "the refusal tells no secret");
        }
        assertEquals(403, status(post("/api/codes", "", "{}").replace(secret + "/api/codes", path)));
    }

    @Test
    void theSecretIsNewAtEachStartAndLong() throws IOException {
        try (WebServer other =
                WebServer.start(0, Library.shipped(() -> LocalDate.of(2026, 3, 2)), Duration.ofSeconds(5))) {
            assertFalse(other.address().getPath().equals(server.address().getPath()));
        }
        assertTrue(secret.length() > 22, "128 bits or more in letters of base 64");
    }

    @Test
    void aFormOfAnotherSiteCannotPostSinceOnlyJsonIsTaken() throws IOException {
        String head = "POST " + secret + "/api/codes HTTP/1.1\r\nHost: 127.0.0.1:" + port
                + "\r\nContent-Type: text/plain\r\nContent-Length: 2\r\nConnection: close\r\n\r\n{}";
        assertEquals(415, status(head));
    }

    @ParameterizedTest
    @ValueSource(strings = {"PUT", "DELETE", "OPTIONS", "TRACE", "HEAD"})
    void otherMethodsAreRefused(String method) throws IOException {
        assertEquals(405, status(method + " / HTTP/1.1\r\nHost: 127.0.0.1:" + port + "\r\nConnection: close\r\n\r\n"));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "/../pom.xml",
                "/..%2fpom.xml",
                "/%2e%2e/%2e%2e/etc/passwd",
                "/starts/../look.css",
                "/starts/bench-stainless.yaml",
                "//etc/passwd",
                "/look.css/",
                "/look.css%00.html",
                "/WebServer.class",
                "/..\\look.css"
            })
    void noPathLeadsOutOfThePage(String path) throws IOException {
        int status = status(
                "GET " + secret + path + " HTTP/1.1\r\nHost: 127.0.0.1:" + port + "\r\nConnection: close\r\n\r\n");
        assertTrue(status == 404 || status == 400, path + " gave " + status);
    }

    @Test
    void aTaskNamesNoFileOfThisMachine() throws IOException {
        String task = "{\"task\": \"extends: /etc/passwd\"}";
        String reply = exchange(post("/api/advise", "", task));
        assertTrue(reply.startsWith("HTTP/1.1 422"), reply);
        assertTrue(reply.contains("is for files on disk"), reply);
        assertFalse(reply.contains("root:"), reply);
    }

    @Test
    void theCodeOfATaskIsNoPath() throws IOException {
        String task = "{\"task\":{\"title\":\"t\",\"code\":\"../../etc\",\"on\":\"2026-03-02\"}}";
        assertEquals(422, status(post("/api/advise", "", task)));
    }

    @Test
    void everyReplyForbidsInlineScript() throws IOException {
        for (String request : List.of(
                "GET " + secret + "/ HTTP/1.1\r\nHost: 127.0.0.1:" + port + "\r\nConnection: close\r\n\r\n",
                "GET " + secret + "/none HTTP/1.1\r\nHost: 127.0.0.1:" + port + "\r\nConnection: close\r\n\r\n",
                post("/api/codes", "", "{}"))) {
            String reply = exchange(request).toLowerCase(java.util.Locale.ROOT);
            String policy = reply.lines()
                    .filter(l -> l.startsWith("content-security-policy:"))
                    .findFirst()
                    .orElse("");
            assertTrue(policy.contains("default-src 'none'"), policy);
            assertTrue(policy.contains("frame-ancestors 'none'"), policy);
            assertFalse(policy.contains("unsafe"), policy);
            assertTrue(reply.contains("x-content-type-options: nosniff"), reply);
        }
    }

    @Test
    void thePageItselfHoldsNoInlineScriptOrStyle() {
        String page = new String(PageFiles.bytes("index.html"), StandardCharsets.UTF_8);
        assertFalse(page.matches("(?s).*<script(?![^>]*src=).*"), page);
        assertFalse(page.matches("(?s).*(<style|style=|\\son[a-z]+=|https?:).*"), page);
    }

    @Test
    void aRequestThatIsTooLargeIsRefused() throws IOException {
        String body = "{\"task\":\"" + "x".repeat(WebServer.MAX_BYTES) + "\"}";
        assertEquals(413, status(post("/api/advise", "", body)));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "[]", "7", "{", "{\"task\":7}", "{\"task\":{}}", "nonsense"})
    void nonsenseIsRefusedInASentence(String body) throws IOException {
        String reply = exchange(post("/api/advise", "", body));
        assertTrue(reply.startsWith("HTTP/1.1 4"), reply);
        assertTrue(reply.contains("\"message\":\""), reply);
    }

    @Test
    void aDeeplyNestedTaskIsRefusedAndTheServerGoesOn() throws IOException {
        String deep = "[".repeat(900) + "]".repeat(900);
        int status = status(post("/api/save", "", "{\"task\":" + deep + "}"));
        assertTrue(status >= 400 && status < 500, "gave " + status);
        assertEquals(200, status(post("/api/codes", "", "{}")));
    }

    @Test
    void workThatTakesTooLongIsStoppedAndSaid() throws IOException {
        CountDownLatch never = new CountDownLatch(1);
        Library waiting = Library.shipped(() -> {
            try {
                never.await();
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
            }
            return LocalDate.of(2026, 3, 2);
        });
        try (WebServer hasty = WebServer.start(0, waiting, Duration.ofMillis(50))) {
            String reply = exchange(
                    hasty.listening().getPort(),
                    post("/api/codes", "", "{}")
                            .replace(":" + port, ":" + hasty.listening().getPort())
                            .replace(secret + "/", hasty.address().getPath()));
            assertTrue(reply.startsWith("HTTP/1.1 503"), reply);
            assertTrue(reply.contains("was stopped"), reply);
        }
    }

    /** A request may trickle for 15 s; the JDK looks once in a while, so the line is cut some seconds later. */
    @Test
    @Tag("ci")
    void aRequestThatTricklesInIsCutOff() throws IOException {
        try (Socket socket = new Socket(InetAddress.getLoopbackAddress(), port)) {
            socket.setSoTimeout(40_000);
            String half = post("/api/codes", "", "{}");
            socket.getOutputStream().write(half.substring(0, half.length() - 40).getBytes(StandardCharsets.UTF_8));
            socket.getOutputStream().flush();
            long start = System.nanoTime();
            int read;
            try {
                read = socket.getInputStream().read();
            } catch (java.net.SocketException e) {
                read = -1;
            }
            assertEquals(-1, read, "the server hangs up without an answer");
            assertTrue(Duration.ofNanos(System.nanoTime() - start).toSeconds() < 40);
        }
    }

    @Test
    void fortySlowClientsHoldNobodyUp() throws IOException {
        java.util.List<Socket> slow = new java.util.ArrayList<>();
        try {
            for (int i = 0; i < 40; i++) {
                Socket socket = new Socket(InetAddress.getLoopbackAddress(), port);
                socket.getOutputStream().write("POST /api/codes HT".getBytes(StandardCharsets.UTF_8));
                socket.getOutputStream().flush();
                slow.add(socket);
            }
            long start = System.nanoTime();
            assertEquals(200, status(post("/api/codes", "", "{}")));
            assertTrue(Duration.ofNanos(System.nanoTime() - start).toSeconds() < 10);
        } finally {
            for (Socket socket : slow) {
                socket.close();
            }
        }
    }

    private static String post(String path, String headers, String body) {
        return "POST " + secret + path + " HTTP/1.1\r\nHost: 127.0.0.1:" + port + "\r\n" + headers
                + "Content-Type: application/json\r\nContent-Length: " + body.getBytes(StandardCharsets.UTF_8).length
                + "\r\nConnection: close\r\n\r\n" + body;
    }

    private static int status(String request) throws IOException {
        return Integer.parseInt(exchange(request).split(" ")[1]);
    }

    private static String exchange(String request) throws IOException {
        return exchange(port, request);
    }

    private static String exchange(int to, String request) throws IOException {
        try (Socket socket = new Socket(InetAddress.getLoopbackAddress(), to)) {
            socket.setSoTimeout(30_000);
            OutputStream out = socket.getOutputStream();
            InputStream in = socket.getInputStream();
            try {
                out.write(request.getBytes(StandardCharsets.UTF_8));
                out.flush();
            } catch (IOException e) {
                // The server may hang up before it has read all of a refused request; its answer still counts.
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }
}
