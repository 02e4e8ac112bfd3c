package org.fumewarden.report.upkeep;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import org.fumewarden.codes.CodeBook;
import org.fumewarden.codes.RuleFolder;
import org.fumewarden.duties.DutyBook;
import org.fumewarden.report.html.Speech;
import org.fumewarden.upkeep.Draft;
import org.fumewarden.upkeep.Forms;
import org.fumewarden.upkeep.Item;
import org.fumewarden.upkeep.Store;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Records beyond examinations of units: each field that the row of the duty names is shown, or named as lacking. */
class DutyRecordTest {
    private static final Instant NOW = Instant.parse("2026-03-02T09:00:00Z");
    private static final LocalDate TODAY = LocalDate.parse("2026-03-02");

    @TempDir
    Path folder;

    private Store store;

    @BeforeEach
    void open() {
        store = Store.open(folder.resolve("log.db"));
        item("site", "employer", "Tarn Haven Fabrication", "address", "Quay Road 1");
        item("mask", "id", "M-1", "model", "half mask, size M");
        item("wearer", "id", "W-07", "name", "=Sanna Teller", "masks", "M-1");
        item("plant", "id", "X-01", "description", "arm extraction", "place", "bay 2", "process", "MIG welding");
        item("air-supply", "id", "C-1", "description", "compressor");
    }

    @AfterEach
    void close() {
        store.close();
    }

    private void item(String kind, String... words) {
        Map<String, String> values = new java.util.HashMap<>(Map.of("id", "site"));
        for (int i = 0; i < words.length; i += 2) {
            values.put(words[i], words[i + 1]);
        }
        Map<String, List<String>> facts = Map.of(
                "face-seal", List.of("tight"), "lev-process", List.of("general"), "air-delivery", List.of("airline"));
        Item item = Forms.item(kind, values, kind.equals("site") || kind.equals("wearer") ? Map.of() : facts);
        store.append(Draft.registering(item, TODAY, "stores"), NOW);
    }

    private void logged(String item, String kind, String day, Map<String, String> values) {
        store.append(new Draft(item, LocalDate.parse(day), "Odran Pell", Forms.details(kind, values)), NOW);
    }

    private DutyRecord record(String code, String item) {
        return DutyRecord.of(
                store,
                store.item(item).orElseThrow(),
                DutyBook.of(CodeBook.read(RuleFolder.shipped(), code), TODAY).duties(),
                TODAY);
    }

    private static String line(String text, String field) {
        return text.lines()
                .filter(l -> l.strip().startsWith(field + "  "))
                .findFirst()
                .map(l -> l.strip().substring(field.length()).strip())
                .orElse("no such field in\n" + text);
    }

    /** COSHH regulation 9(2)(a) and (4), HSG258: what the record of a thorough examination of extraction must say. */
    @Test
    void theRecordOfExtractionShowsWhatIsKnownAndNamesWhatIsLacking() {
        Map<String, String> sound = Map.of("result", "passed", "condition", "sound", "methods", "smoke");
        logged("X-01", "examination", "2025-01-31", sound);
        logged("X-01", "examination", "2026-03-01", sound);
        String text = record("gb", "X-01").text(Speech.ENGLISH);
        assertEquals("X-01; bay 2", line(text, "id and location of the extraction system"));
        assertEquals("2025-01-31", line(text, "last exam date"));
        assertEquals("NOT RECORDED", line(text, "substances"));
        assertEquals("NOT RECORDED", line(text, "intended performance and whether met"));
        assertTrue(text.contains("COSHH reg 9(2)(a)"), text);
        assertFalse(record("gb", "X-01").whole());
    }

    /** The same clauses: operating conditions, intended performance and whether it is met, methods, who examined for whom. */
    @Test
    void aWholeRecordOfExtractionLacksNothing() {
        item(
                "plant",
                "id",
                "X-01",
                "description",
                "arm extraction",
                "place",
                "bay 2",
                "process",
                "MIG welding",
                "substances",
                "welding fume");
        logged(
                "X-01",
                "examination",
                "2026-03-01",
                Map.of(
                        "result",
                        "passed",
                        "condition",
                        "sound",
                        "action",
                        "none",
                        "methods",
                        "smoke, anemometer",
                        "operating-conditions",
                        "two arms in use, filters clean",
                        "intended-performance",
                        "0.5 m/s at the hood face",
                        "performance-met",
                        "yes",
                        "designation",
                        "ventilation examiner",
                        "examiner-employer",
                        "Tarn Haven Fabrication",
                        "signature",
                        "O. P."));
        DutyRecord record = record("gb", "X-01");
        assertEquals(List.of(), record.gaps("examination"));
        assertTrue(record.whole());
        assertEquals(
                "0.5 m/s at the hood face; met: yes",
                line(record.text(Speech.ENGLISH), "intended performance and whether met"));
        assertTrue(record.text(Speech.ENGLISH)
                .replaceAll("\\s+", " ")
                .contains("Odran Pell; ventilation examiner; Tarn Haven Fabrication; O. P."));
        assertTrue(record.html(Speech.ENGLISH).contains("two arms in use, filters clean"));
        assertTrue(record.csv().contains("operating conditions,\"two arms in use, filters clean\""), record.csv());
    }

    /** HSG258: a plant that does not do what it is meant to do has failed, whatever else was ticked. */
    @Test
    void aPlantThatMissesItsPerformanceIsClosed() {
        logged(
                "X-01",
                "examination",
                "2026-03-01",
                Map.of("result", "passed", "condition", "sound", "performance-met", "no"));
        assertFalse(store.state("X-01").inService());
        assertTrue(record("gb", "X-01").text(Speech.ENGLISH).contains("DO NOT USE"));
    }

    /** COSHH regulation 11(3): particulars, conclusions on fitness, history of exposure. */
    @Test
    void theHealthRecordHasItsPlaces() {
        logged(
                "W-07",
                "medical",
                "2026-03-01",
                Map.of(
                        "result",
                        "passed",
                        "topic",
                        "surveillance",
                        "particulars",
                        "file H-7",
                        "exposure-history",
                        "MIG welding since 2019"));
        String text = record("gb", "W-07").text(Speech.ENGLISH);
        assertEquals("file H-7", line(text, "HSE-approved particulars"));
        assertEquals("MIG welding since 2019", line(text, "exposure history"));
    }

    /** 29 CFR 1910.134(m)(2): name, type of test, make, model, style, size, date, and pass or fail or the factor and recording. */
    @Test
    void aQualitativeFitTestIsNotAskedForAFactor() {
        logged(
                "W-07",
                "fit-test",
                "2026-03-01",
                Map.of("result", "passed", "model", "half mask, size M", "method", "qualitative, bitter aerosol"));
        DutyRecord record = record("us", "W-07");
        assertEquals(List.of(), record.gaps("fit-test"));
        assertEquals(
                "does not apply",
                line(record.text(Speech.ENGLISH), "QNFT: fit factor + strip chart or other recording"));
        assertEquals("W-07; =Sanna Teller", line(record.text(Speech.ENGLISH), "employee name or id"));
    }

    @Test
    void aMeasuredFitTestWithoutItsRecordingIsNamedAsIncomplete() {
        logged(
                "W-07",
                "fit-test",
                "2026-03-01",
                Map.of(
                        "result",
                        "passed",
                        "model",
                        "half mask, size M",
                        "method",
                        "quantitative",
                        "fit-factor",
                        "140"));
        assertEquals(
                List.of("QNFT: fit factor + strip chart or other recording"),
                record("us", "W-07").gaps("fit-test"));
    }

    @Test
    void airTestsTrainingAndClearancesHaveTheirRecords() {
        logged(
                "C-1",
                "air-test",
                "2026-03-01",
                Map.of("result", "passed", "topic", "breathing", "oxygen", "20.9", "oil", "0.1"));
        assertEquals("20.9 %", line(record("gb", "C-1").text(Speech.ENGLISH), "O2"));
        assertEquals("NOT RECORDED", line(record("gb", "C-1").text(Speech.ENGLISH), "CO2"));
        logged("W-07", "training", "2026-03-01", Map.of("result", "passed", "content", "donning"));
        assertEquals("donning", line(record("de", "W-07").text(Speech.ENGLISH), "content"));
        assertEquals(
                "donning",
                line(record("gb", "W-07").text(Speech.ENGLISH), "content"),
                "shown though no row asks for a record");
        logged("W-07", "medical", "2026-03-01", Map.of("result", "passed", "topic", "clearance"));
        assertEquals("NOT RECORDED", line(record("us", "W-07").text(Speech.ENGLISH), "copy given to employee"));
        assertEquals("passed", line(record("us", "W-07").text(Speech.ENGLISH), "able to use"));
        logged("W-07", "medical", "2026-03-02", Map.of("result", "passed", "topic", "clearance", "copy-given", "no"));
        assertEquals("no", line(record("us", "W-07").text(Speech.ENGLISH), "copy given to employee"));
    }

    @Test
    void aCorrectedEntryIsNotPrinted() {
        logged("X-01", "examination", "2026-03-01", Map.of("result", "passed", "condition", "wrong plant"));
        store.append(
                new Draft(
                        "X-01",
                        TODAY,
                        "Odran Pell",
                        new org.fumewarden.upkeep.Details.Correction(
                                store.head().entries(), "another plant", Optional.empty())),
                NOW);
        assertTrue(record("gb", "X-01")
                .text(Speech.ENGLISH)
                .contains("NOT RECORDED: examination of the extraction, for X-01."));
    }

    @Test
    void aDutyOfAnotherTradeIsNotPrintedAsAGap() {
        assertFalse(record("gb", "W-07").text(Speech.ENGLISH).contains("Medical lead"));
    }

    @Test
    void markupAndFormulasStayText() {
        logged("W-07", "training", "2026-03-01", Map.of("result", "passed", "content", "=1+1 <b>"));
        assertTrue(record("gb", "W-07").csv().contains("'=1+1 <b>"));
        assertTrue(record("gb", "W-07").html(Speech.ENGLISH).contains("=1+1 &lt;b&gt;"));
    }

    /** Fields that no entry holds yet are a closed list, so that a new row cannot add one unseen. */
    @Test
    void everyFieldOfThesePapersHasItsPlaceOrIsWrittenByHand() {
        TreeSet<String> byHand = new TreeSet<>();
        for (String code : List.of("gb", "us", "de", "au")) {
            DutyBook.of(CodeBook.read(RuleFolder.shipped(), code), TODAY).duties().stream()
                    .filter(d -> d.doneBy().matches("(fit-test|training|medical|air-test/breathing).*")
                            || d.id().startsWith("gb-lev"))
                    .flatMap(d -> d.fields().stream())
                    .filter(f -> !RecordFields.held(f))
                    .forEach(byHand::add);
        }
        assertEquals(List.of(), List.copyOf(byHand));
    }
}
