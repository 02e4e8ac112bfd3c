package org.fumewarden.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
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
        String page = new String(
                new Papers(desk).write("examination", "X-01", Words.in("en")).body(), StandardCharsets.UTF_8);
        String sheet = yard.read(store -> DutyRecord.of(
                        store,
                        store.item("X-01").orElseThrow(),
                        yard.duties(store, LIBRARY, "").duties(),
                        LIBRARY.today())
                .html(Speech.ENGLISH));
        assertEquals(sheet, page);
        assertTrue(page.contains("intended performance NOT RECORDED; met: yes"), page);
        assertTrue(page.contains("operating conditions"), page);
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
}
