package org.fumewarden.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Papers and entries over the wire: text stays text, and a page of another site writes nothing. */
class UpkeepServerTest {
    private static final Library LIBRARY = Library.shipped(() -> Yard.TODAY);

    @TempDir
    Path folder;

    private Workshop yard;

    @BeforeEach
    void open() {
        yard = Yard.in(folder);
    }

    private long written() {
        long entries = yard.read(s -> s.head().entries());
        return entries;
    }

    /** RFC 5545 names the text/calendar type; a label holds the id alone. */
    @Test
    void theCalendarIsAFileAndLabelsHoldHostileTextAsText() throws Exception {
        try (WebServer server = WebServer.start(0, LIBRARY, Optional.of(yard), Duration.ofSeconds(30))) {
            HttpResponse<String> calendar = get(server, "/paper/calendar", "none");
            assertTrue(calendar.body().startsWith("BEGIN:VCALENDAR"), calendar.body());
            assertTrue(calendar.headers().firstValue("Content-Type").orElse("").startsWith("text/calendar"));
            assertTrue(calendar.headers()
                    .firstValue("Content-Disposition")
                    .orElse("")
                    .contains("attachment"));
            HttpResponse<String> labels = get(server, "/paper/labels", "none");
            assertTrue(labels.body().contains("U-014") && labels.body().contains("<svg"));
            assertFalse(labels.body().contains("<img"));
        }
    }

    @Test
    void papersAreInTheLanguageOfThePage() throws Exception {
        try (WebServer server = WebServer.start(0, LIBRARY, Optional.of(yard), Duration.ofSeconds(30))) {
            for (String sheet : List.of("examination?item=U-015&", "card?item=U-015&", "due?", "labels?")) {
                String page =
                        get(server, "/paper/" + sheet + "language=de", "none").body();
                assertTrue(page.contains("lang=\"de\""), sheet);
                String words =
                        page.replaceAll("(?s)<(style|title)>.*?</\\1>", "").replaceAll("<[^>]*>", "\n");
                assertEquals(
                        "",
                        org.fumewarden.language.GermanLines.faults(sheet, words, List.of("blower unit", "as found")));
            }
        }
    }

    @Test
    void papersHoldHostileTextAsTextAndForbidEverythingButTheirStyle() throws Exception {
        try (WebServer server = WebServer.start(0, LIBRARY, Optional.of(yard), Duration.ofSeconds(30))) {
            for (String sheet : List.of("examination?item=U-015", "card?item=U-015", "due")) {
                HttpResponse<String> page = get(server, "/paper/" + sheet, "none");
                assertEquals(200, page.statusCode(), sheet);
                assertFalse(page.body().contains("<img"), sheet);
                assertTrue(page.body().contains("&lt;img src=x"), sheet);
                String policy =
                        page.headers().firstValue("Content-Security-Policy").orElse("");
                assertTrue(policy.startsWith("default-src 'none'; style-src 'sha256-"), policy);
            }
            assertEquals(403, get(server, "/paper/due", "cross-site").statusCode());
            for (String path :
                    List.of("/paper/", "/paper/store", "/paper/card/U-014", "/paper/..%2f", "/paper/card?item=%25zz")) {
                int status = get(server, path, "none").statusCode();
                assertTrue(status == 404 || status == 422, path + " gave " + status);
            }
        }
    }

    private static HttpResponse<String> get(WebServer server, String path, String site) throws Exception {
        HttpRequest request = HttpRequest.newBuilder(URI.create(server.address() + path.substring(1)))
                .header("Sec-Fetch-Site", site)
                .build();
        return HttpClient.newHttpClient().send(request, HttpResponse.BodyHandlers.ofString(StandardCharsets.UTF_8));
    }

    /** A page of another site can send neither JSON nor a form: the log stays as it was. */
    @Test
    void anotherSiteWritesNothing() throws Exception {
        try (WebServer server = WebServer.start(0, LIBRARY, Optional.of(yard), Duration.ofSeconds(30))) {
            String body =
                    "{\"kind\":\"repair\",\"item\":\"U-014\",\"on\":\"2026-03-02\",\"by\":\"S\",\"values\":{\"work\":\"hose\"}}";
            long before = written();
            assertEquals(403, post(server, body, "application/json", "http://tarn-haven.example"));
            assertEquals(
                    415,
                    post(
                            server,
                            body,
                            "text/plain",
                            "http://127.0.0.1:" + server.listening().getPort()));
            assertEquals(413, post(server, "x".repeat(WebServer.MAX_BYTES + 1), "application/json", ""));
            assertEquals(before, written());
            assertEquals(200, post(server, body, "application/json", ""));
            assertEquals(before + 1, written());
        }
    }

    private static int post(WebServer server, String body, String type, String origin) throws Exception {
        HttpRequest.Builder request = HttpRequest.newBuilder(server.address().resolve("api/log"))
                .header("Content-Type", type)
                .POST(HttpRequest.BodyPublishers.ofString(body));
        if (!origin.isEmpty()) {
            request.header("Origin", origin);
        }
        return HttpClient.newHttpClient()
                .send(request.build(), HttpResponse.BodyHandlers.ofString())
                .statusCode();
    }
}
