package org.fumewarden.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.fumewarden.codes.InputException;
import org.fumewarden.codes.Problem;
import org.fumewarden.report.html.Speech;
import org.fumewarden.report.html.Words;
import org.fumewarden.report.upkeep.DutyRecord;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import org.junit.jupiter.api.io.TempDir;

/** The log over the page: what is owed, what is refused and for which field, and that text stays text. */
class UpkeepDeskTest {
    private static final ObjectMapper MAPPER = new ObjectMapper();
    private static final Library LIBRARY = Library.shipped(() -> Yard.TODAY);

    @TempDir
    Path folder;

    private Workshop yard;
    private UpkeepDesk desk;

    @BeforeEach
    void open() {
        yard = Yard.in(folder);
        desk = new UpkeepDesk(LIBRARY, Optional.of(yard));
    }

    private static JsonNode asked(String json) throws IOException {
        return MAPPER.readTree(json.replace('\'', '"'));
    }

    private static JsonNode told(Reply reply) throws IOException {
        return MAPPER.readTree(reply.body());
    }

    private long written() {
        long entries = yard.read(s -> s.head().entries());
        return entries;
    }

    private List<Problem> refused(String json) {
        return assertThrows(InputException.class, () -> desk.log(asked(json))).problems();
    }

    /** Examined on 2026-01-12; at least monthly (COSHH regulation 9(3), L5 paragraph 178): the last day was 2026-02-12, 18 days ago. */
    @Test
    void theOverdueExaminationStandsFirstWithItsClause() throws IOException {
        JsonNode first = told(desk.due(asked("{}"))).path("owings").path(0);
        assertEquals("U-014", first.path("item").asText());
        assertEquals("overdue", first.path("status").asText());
        assertEquals("2026-02-12", first.path("due").asText());
        assertEquals(18, first.path("days-over").asInt());
        assertTrue(first.path("duties").path(0).path("clause").asText().contains("COSHH reg 9(3)"));
    }

    @Test
    void aFlowBelowTheMinimumOfTheRegisterClosesTheUnitWhateverTheFormSays() throws IOException {
        JsonNode entry =
                told(desk.log(asked("{'kind':'before-use-check','item':'U-014','on':'2026-03-02','by':'Sanna Teller',"
                        + "'values':{'result':'passed','flow':'150'}}")));
        assertEquals("failed", entry.path("result").asText());
        assertFalse(entry.path("because").asText().isEmpty());
        JsonNode item = told(desk.due(asked("{}"))).path("items").path(0);
        assertEquals("U-014", item.path("id").asText());
        assertFalse(item.path("in-service").asBoolean());
    }

    @Test
    void whatIsWrongIsSaidForItsField() {
        String start = "{'kind':'examination','item':'U-014','on':'2026-03-02','by':'S. Teller','values':";
        assertEquals(
                "flow",
                refused(start + "{'result':'passed','condition':'good','flow':'fast'}}")
                        .get(0)
                        .field());
        assertEquals("condition", refused(start + "{'result':'passed'}}").get(0).field());
        assertEquals("result", refused(start + "{'condition':'good'}}").get(0).field());
        String no = "','values':{'result':'passed','condition':'good'}}";
        assertEquals(
                "on",
                refused("{'kind':'examination','item':'U-014','on':'soon','by':'S" + no)
                        .get(0)
                        .field());
        assertEquals(
                "by",
                refused("{'kind':'examination','item':'U-014','on':'2026-03-02','by':'" + no)
                        .get(0)
                        .field());
        assertEquals(
                "item",
                refused("{'kind':'examination','item':'U-99','on':'2026-03-02','by':'S" + no)
                        .get(0)
                        .field());
        assertEquals(
                "kind",
                refused("{'kind':'registration','item':'U-014','on':'2026-03-02','by':'S" + no)
                        .get(0)
                        .field());
    }

    private static final String SEVEN = "'method':'quantitative','exercises':'140, 140, 140, 140, 140, 140, 140'";

    private static String fitTest(String model, String values) {
        return "{'kind':'fit-test','item':'W-07','on':'2026-03-02','by':'Sanna Teller','values':{'result':'passed',"
                + "'model':'" + model + "'," + values + "}}";
    }

    /** INDG479: a fit factor of 100 for half masks, 2000 for full face masks. */
    @Test
    void aFitTestIsJudgedByTheLevelsOfTheCode() throws IOException {
        Yard.more(yard);
        JsonNode passed = told(desk.log(asked(fitTest("half mask, size M", SEVEN + ",'face':'half'"))));
        assertEquals("passed", passed.path("result").asText());
        JsonNode failed = told(desk.log(asked(fitTest("full mask, size M", SEVEN))));
        assertEquals("failed", failed.path("result").asText());
        assertTrue(failed.path("says").asText().contains("2000"), failed.toString());
        assertEquals("face", refused(fitTest("mask, size M", SEVEN)).get(0).field());
        JsonNode parts = told(desk.history(asked("{'item':'W-07'}")))
                .path("entries")
                .path(0)
                .path("parts");
        assertTrue(parts.toString().contains("140") && parts.toString().contains("\"face\""), parts.toString());
    }

    @Test
    void aPlantIsAskedAboutItsPerformanceAndAUnitIsNot() throws IOException {
        for (JsonNode kind : told(desk.due(asked("{}"))).path("kinds")) {
            for (JsonNode field : kind.path("fields")) {
                boolean plant = List.of("operating-conditions", "intended-performance", "performance-met")
                        .contains(field.path("name").asText());
                assertEquals(plant, field.path("concerns").toString().equals("[\"plant\"]"), field.toString());
            }
        }
    }

    /** The record of a plant or wearer is the sheet that the command line prints. */
    @Test
    void theRecordOfWhatIsNoUnitIsTheSheetOfTheCommandLine() {
        Yard.more(yard);
        desk.log(json("{'kind':'examination','item':'X-01','on':'2026-03-02','by':'S','values':{'result':'passed',"
                + "'condition':'sound','performance-met':'yes'}}"));
        for (String id : List.of("X-01")) {
            String page = new String(
                    new Papers(desk).write("examination", id, Words.in("en")).body(), StandardCharsets.UTF_8);
            String sheet = yard.read(store -> DutyRecord.of(
                            store,
                            store.item(id).orElseThrow(),
                            yard.duties(store, LIBRARY, "").duties(),
                            LIBRARY.today())
                    .html(Speech.ENGLISH));
            assertEquals(sheet, page);
        }
        String plant = new String(
                new Papers(desk).write("examination", "X-01", Words.in("en")).body(), StandardCharsets.UTF_8);
        assertTrue(plant.contains("intended performance NOT RECORDED; met: yes"), plant);
        assertTrue(plant.contains("operating conditions"), plant);
    }

    /** The page is looked at over shoulders: of health it shows days and whether somebody is fit, nothing else. */
    @Test
    void ofHealthOnlyDaysAndFitnessAreShown() throws IOException {
        Yard.more(yard);
        desk.log(asked(
                "{'kind':'medical','item':'W-07','on':'2026-03-02','by':'Dr Ivo Lund','values':{'result':'passed',"
                        + "'topic':'clearance','limits':'powered units only','follow-up':'heart again in May','particulars':'asthma',"
                        + "'exposure-history':'lead 2019'}}"));
        String shown = told(desk.history(asked("{'item':'W-07'}"))).toString();
        assertTrue(shown.contains("powered units only") && shown.contains("2026-03-02"), shown);
        for (String secret : List.of("asthma", "heart", "lead 2019")) {
            assertFalse(shown.contains(secret), shown);
        }
        assertThrows(InputException.class, () -> new Papers(desk).write("examination", "W-07", Words.in("en")));
    }

    private static String check(String item, String on, String points, String more) {
        return "{'kind':'before-use-check','item':'" + item + "','on':'" + on + "','by':'Sanna Teller'" + more
                + ",'values':{'result':'passed','points':'" + points + "'}}";
    }

    private String allPassed() throws IOException {
        StringBuilder points = new StringBuilder();
        told(desk.item(asked("{'item':'U-014'}")))
                .at("/item/checks")
                .forEach(c -> points.append(c.path("id").asText()).append(": passed; "));
        return points.toString();
    }

    @Test
    void slipsOfAThumbAreCaughtBeforeTheyStandInTheLog() throws IOException {
        Yard.more(yard);
        String all = allPassed();
        assertEquals("on", refused(check("U-014", "2026-03-03", all, "")).get(0).field());
        assertEquals(
                "points", refused(check("U-014", "2026-03-02", "", "")).get(0).field());
        assertEquals(
                "kind", refused(check("X-01", "2026-03-02", all, "")).get(0).field());
        assertEquals(
                "sure", refused(check("U-014", "2025-03-02", all, "")).get(0).field());
        desk.log(asked(check("U-014", "2026-03-02", all, "")));
        assertEquals(
                "sure", refused(check("U-014", "2026-03-02", all, "")).get(0).field());
        long before = written();
        desk.log(asked(check("U-014", "2026-03-02", all, ",'sure':true")));
        assertEquals(before + 1, written());
    }

    @Test
    void anItemIsRegisteredOnceUnlessAChangeIsMeant() throws IOException {
        String mask =
                "{'kind':'mask','by':'Sanna Teller','values':{'id':'M-9','model':'full mask, size L','face-seal':'tight'}%s}";
        assertEquals(
                "M-9",
                told(desk.register(asked(String.format(mask, "")))).path("item").asText());
        List<Problem> twice = assertThrows(InputException.class, () -> desk.register(asked(String.format(mask, ""))))
                .problems();
        assertEquals("sure", twice.get(0).field());
        desk.register(asked(String.format(mask, ",'sure':true")));
        List<Problem> empty = assertThrows(
                        InputException.class,
                        () -> desk.register(asked("{'kind':'unit','by':'S','values':{'id':'U-20'}}")))
                .problems();
        assertEquals("description", empty.get(0).field());
        List<Problem> fact = assertThrows(
                        InputException.class,
                        () -> desk.register(
                                asked("{'kind':'mask','by':'S','values':{'id':'M-2','model':'x','face-seal':'wet'}}")))
                .problems();
        assertEquals("face-seal", fact.get(0).field());
    }

    @Test
    void oneItemIsShownAloneWithWhatIsDueForIt() throws IOException {
        JsonNode item = told(desk.item(asked("{'item':'U-014'}")));
        assertEquals("U-014", item.at("/item/id").asText());
        item.path("owings").forEach(o -> assertEquals("U-014", o.path("item").asText()));
        assertTrue(item.path("owings").size() > 0 && item.at("/item/checks").size() > 5, item.toString());
        assertThrows(InputException.class, () -> desk.item(asked("{'item':''}")));
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

    private static JsonNode json(String text) {
        try {
            return asked(text);
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    @Test
    void aRefusedEntryIsNotWritten() {
        long before = written();
        refused("{'kind':'repair','item':'U-014','on':'2026-03-02','by':'S','values':{}}");
        refused("{'kind':'repair','item':'U-014','on':'2026-03-02','by':'S','values':{'work':'" + "x".repeat(2001)
                + "'}}");
        assertEquals(before, written());
    }

    @Test
    void aCorrectionTakesThePlaceOfAnEntryThatStays() throws IOException {
        desk.log(
                asked(
                        "{'kind':'examination','item':'U-014','on':'2026-01-12','by':'S. Teller','corrects':'4',"
                                + "'corrects-because':'wrong flow read','values':{'result':'passed','condition':'good','flow':'170'}}"));
        JsonNode entries = told(desk.history(asked("{'item':'U-014'}"))).path("entries");
        assertEquals(4, entries.path(0).path("corrects").asInt());
        assertTrue(entries.path(1).path("superseded").asBoolean());
        assertEquals("no number", refusal("x7"));
    }

    private String refusal(String entry) {
        String message = refused("{'kind':'repair','item':'U-014','on':'2026-03-02','by':'S','corrects':'" + entry
                        + "','values':{'work':'hose'}}")
                .get(0)
                .message();
        return message.startsWith("is no number") ? "no number" : message;
    }

    @Test
    void withoutAStoreThePlaceSaysSoAndNothingIsWritten() throws IOException {
        UpkeepDesk shut = new UpkeepDesk(LIBRARY, Optional.empty());
        assertFalse(told(shut.due(asked("{}"))).path("open").asBoolean());
        JsonNode nothing = asked("{}");
        for (Executable call : List.<Executable>of(() -> shut.log(nothing), () -> shut.history(nothing))) {
            InputException refused = assertThrows(InputException.class, call);
            assertTrue(refused.problems().get(0).remedy().contains("--store FILE"));
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
