package org.fumewarden.report.upkeep;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.StringReader;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.time.Period;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import net.fortuna.ical4j.data.CalendarBuilder;
import net.fortuna.ical4j.model.Calendar;
import net.fortuna.ical4j.model.component.VToDo;
import net.fortuna.ical4j.model.property.Due;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.apache.commons.text.StringEscapeUtils;
import org.fumewarden.codes.CodeBook;
import org.fumewarden.codes.RuleFolder;
import org.fumewarden.duties.DutyBook;
import org.fumewarden.report.html.Speech;
import org.fumewarden.upkeep.Details;
import org.fumewarden.upkeep.Draft;
import org.fumewarden.upkeep.DueList;
import org.fumewarden.upkeep.DueReport;
import org.fumewarden.upkeep.Forms;
import org.fumewarden.upkeep.Item;
import org.fumewarden.upkeep.LogEntry;
import org.fumewarden.upkeep.Owing;
import org.fumewarden.upkeep.Store;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SheetsTest {
    private static final Instant NOW = Instant.parse("2026-03-02T09:00:00Z");
    private static final LocalDate TODAY = LocalDate.parse("2026-03-02");

    /** Invented names in many scripts, right-to-left, combining, beyond the basic plane, and with characters that formats abuse. */
    private static final List<String> NAMES = List.of("""
            Þórvaldur Ægisson | Ζήνων Λιμενάρχης | Ярина Верфь-Лоскут | עומר בן-רציף | ليلى بنت المرفأ |
            กานดา ท่าเรือ | घाटवाली मीरा | 港野 溶子 | 용접 나루 | Nguyễn Bến Tàu | ისანი ნავსადგური | ᠨᠠᠷᠠᠨ |
            𐌰𐌹𐍂𐌹𐌺𐍃 | 👩🏽‍🏭 Tess | O'Dell & <b>Sons</b> "Ltd"; a,b\\n
            """.strip().split("\\s*\\|\\s*"));

    @TempDir
    Path folder;

    private Store store;
    private final DutyBook book = DutyBook.of(CodeBook.read(RuleFolder.shipped(), "gb"), TODAY);

    @BeforeEach
    void open() {
        store = Store.open(folder.resolve("log.db"));
        store.append(
                Draft.registering(
                        new Item.Site(
                                "site",
                                "Tarn Haven Fabrication",
                                "Quay Road 1, Tarn Haven",
                                "",
                                "",
                                Map.of("agent", List.of("none"))),
                        TODAY,
                        "stores"),
                NOW);
    }

    @AfterEach
    void close() {
        store.close();
    }

    private Item.Unit unit(String id, String description, String supply) {
        Item.Unit unit = new Item.Unit(
                id,
                description,
                "as on the plate",
                Optional.of(new BigDecimal("160")),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Map.of(
                        "air-delivery", List.of(supply),
                        "face-seal", List.of("loose"),
                        "use-mode", List.of("routine"),
                        "disposable", List.of("false"),
                        "shared", List.of("false"),
                        "filter-kind", List.of("particle")));
        store.append(Draft.registering(unit, TODAY, "stores"), NOW);
        return unit;
    }

    private LogEntry examine(String id, String by, Optional<BigDecimal> flow) {
        Map<String, String> values = new HashMap<>(Map.of(
                "result", "passed", "condition", "sound", "filter-condition", "clean", "battery-condition", "good"));
        values.put("signature", by);
        flow.ifPresent(f -> values.put("flow", f.toPlainString()));
        return store.append(
                new Draft(id, LocalDate.parse("2026-01-31"), by, Forms.details("examination", values)), NOW);
    }

    private DueReport due() {
        return new DueList(store, book.duties(), TODAY, Period.ofDays(7)).compute(Map.of(), Optional.empty());
    }

    private static List<CSVRecord> parsed(String csv) throws IOException {
        assertEquals('\uFEFF', csv.charAt(0));
        try (CSVParser parser = CSVParser.parse(new StringReader(csv.substring(1)), CSVFormat.RFC4180)) {
            return parser.getRecords();
        }
    }

    @Test
    void namesOfEveryScriptSurviveEveryFormat() throws Exception {
        for (int i = 0; i < NAMES.size(); i++) {
            Item.Unit unit = unit("U-" + i, NAMES.get(i), "powered");
            examine(unit.id(), NAMES.get(i), Optional.of(new BigDecimal("171")));
            ExaminationRecord sheet = ExaminationRecord.of(store, unit, book.duties(), TODAY);
            assertTrue(StringEscapeUtils.unescapeXml(sheet.html(Speech.ENGLISH))
                    .contains("<td>" + NAMES.get(i) + "</td>"));
            assertTrue(parsed(sheet.csv()).get(1).stream().anyMatch(NAMES.get(i)::equals), sheet.csv());
            assertTrue(sheet.text(Speech.ENGLISH).contains(NAMES.get(i)), sheet.text(Speech.ENGLISH));
        }
        String written = DutyCalendar.write(due(), book, Speech.ENGLISH, NOW);
        assertShortLines(written);
        Calendar calendar = read(written);
        for (String name : NAMES) {
            assertTrue(
                    calendar.getComponents().stream()
                            .map(VToDo.class::cast)
                            .anyMatch(t -> t.getSummary().getValue().contains("(" + name + ")")),
                    name);
        }
    }

    @Test
    void markupInNamesStaysText() {
        Item.Unit unit = unit("U-1", "<script>alert('x')</script>", "powered");
        String html = ExaminationRecord.of(store, unit, book.duties(), TODAY).html(Speech.ENGLISH);
        assertFalse(html.contains("<script"));
        assertTrue(html.contains("&lt;script&gt;"));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "=1+1",
                "+1+1",
                "-1+1",
                "@SUM(A1)",
                "\t=1",
                "\r=1",
                " =1",
                "\uFF1D1",
                "|calc",
                "\u200B=1",
                "=HYPERLINK(\"//x\")"
            })
    void cellsThatBeginLikeFormulasAreNeutralised(String cell) throws IOException {
        String written = parsed(CsvSheet.write(List.of("a"), List.of(List.of(cell))))
                .get(1)
                .get(0);
        assertEquals("'" + cell, written);
        assertEquals(cell, CsvSheet.original(written));
    }

    @ParameterizedTest
    @ValueSource(strings = {"-5", "171", "0.50", "U-014", "a=b", "'quoted'", ""})
    void harmlessCellsStayAsTheyAre(String cell) throws IOException {
        assertEquals(
                cell,
                parsed(CsvSheet.write(List.of("a", "b"), List.of(List.of(cell, "x"))))
                        .get(1)
                        .get(0));
        assertEquals(cell, CsvSheet.original(cell));
    }

    /** COSHH regulation 9(4), L5 paragraph 184: the flow belongs to powered sets and breathing apparatus only. */
    @Test
    void aRecordAsksForTheFlowOfPoweredUnitsOnly() {
        Item.Unit blown = unit("U-1", "blower", "powered");
        LogEntry without = examine("U-1", "Sanna Teller", Optional.empty());
        assertEquals(
                List.of("flow, L/min"),
                ExaminationRecord.of(store, blown, book.duties(), TODAY).gaps(without));
        Item.Unit lungs = unit("U-2", "half mask set", "unpowered");
        LogEntry alone = examine("U-2", "Sanna Teller", Optional.empty());
        assertEquals(
                List.of(),
                ExaminationRecord.of(store, lungs, book.duties(), TODAY).gaps(alone));
    }

    @Test
    void theRecordCitesWhatOrdersItAndWarnsOfAWithdrawnUnit() {
        Item.Unit unit = unit("U-1", "blower", "powered");
        store.append(new Draft("U-1", TODAY, "Odran Pell", new Details.Withdrawal("hose split", true, false)), NOW);
        String text = ExaminationRecord.of(store, unit, book.duties(), TODAY).text(Speech.ENGLISH);
        assertTrue(text.contains("DO NOT USE"), text);
        assertTrue(text.replaceAll("\\s+", " ").contains("COSHH reg 9(3)-(4)"), text);
        assertFalse(text.contains("gb-cylinder-test"), "a blower has no cylinder");
        assertTrue(BeforeUseCard.of(unit, store.state("U-1"), book)
                .html(Speech.ENGLISH)
                .contains("DO NOT USE"));
    }

    @Test
    void theCardListsTheChecksInTheWearersOrder() {
        Item.Unit unit = unit("U-1", "blower", "powered");
        String card = BeforeUseCard.of(unit, store.state("U-1"), book).text(Speech.ENGLISH);
        List<String> order = List.of(
                "The wearer is trained.",
                "The last thorough examination",
                "The breathing hose",
                "The battery is locked in",
                "flow indicator",
                "Block the outlet",
                "Switch on and put on");
        int at = -1;
        for (String words : order) {
            int next = card.replaceAll("\\s+", " ").indexOf(words);
            assertTrue(next > at, words + " comes too early in\n" + card);
            at = next;
        }
        assertTrue(card.contains("160 L/min"));
    }

    @Test
    void theProgrammeHasEveryChapterAndEveryDuty() {
        unit("U-1", "blower", "powered");
        String html = new WrittenProgramme(
                        store.items(),
                        book,
                        List.of(new TaskAdvice("Brackets", TODAY, Optional.empty(), List.of("Wear TH3. [HSG53]"))),
                        TODAY,
                        Speech.ENGLISH)
                .html();
        for (int chapter = 1; chapter <= 12; chapter++) {
            assertTrue(html.contains(">" + chapter + ". "), "chapter " + chapter);
        }
        String spaced = html.replace('\u00a0', ' ');
        book.duties().forEach(d -> assertTrue(spaced.contains(StringEscapeUtils.escapeXml10(d.what())), d.id()));
        assertTrue(html.contains("Wear TH3. [HSG53]"));
    }

    private static Calendar read(String text) throws Exception {
        return new CalendarBuilder().build(new StringReader(text));
    }

    @Test
    void theCalendarIsReadBackWithOneToDoForEachRollingDuty() throws Exception {
        unit("U-1", "blower", "powered");
        examine("U-1", "Sanna Teller", Optional.of(new BigDecimal("171")));
        DueReport report = due();
        String text = DutyCalendar.write(report, book, Speech.ENGLISH, NOW);
        Calendar calendar = read(text);
        calendar.validate(true);
        assertEquals(
                report.owings().size()
                        + report.unsettled().size()
                        + report.doubts().size(),
                calendar.getComponents().size());
        Owing owing = report.owings().stream()
                .filter(o -> o.item().equals("U-1"))
                .findFirst()
                .orElseThrow();
        // 31 January and a month: 28 February, two days before the day of the list.
        assertEquals(Optional.of(LocalDate.parse("2026-02-28")), owing.due());
        VToDo todo = calendar.getComponents().stream()
                .map(VToDo.class::cast)
                .filter(t -> t.getSummary().getValue().startsWith("U-1"))
                .findFirst()
                .orElseThrow();
        Due<?> day = todo.<Due<?>>getProperty("DUE").orElseThrow();
        assertEquals(LocalDate.parse("2026-02-28"), day.getDate());
        assertTrue(text.contains("DUE;VALUE=DATE:20260228"), text);
        assertTrue(todo.getDescription().getValue().contains("COSHH reg 9"));
        assertShortLines(text);
        assertEquals(text, DutyCalendar.write(report, book, Speech.ENGLISH, NOW), "the same list gives the same bytes");
    }

    /** RFC 5545 section 3.1: lines of at most 75 octets, ended by CR LF. */
    private static void assertShortLines(String text) {
        assertTrue(text.lines().allMatch(l -> l.getBytes(StandardCharsets.UTF_8).length <= 75), text);
        assertEquals(text.lines().count(), text.split("\r\n").length);
    }
}
