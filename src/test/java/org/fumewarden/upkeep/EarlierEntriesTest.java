package org.fumewarden.upkeep;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedReader;
import java.io.StringReader;
import java.io.StringWriter;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What was written before fields were added reads as before, to the byte: the chain of an old store must still fit. */
class EarlierEntriesTest {
    @TempDir(factory = MemoryFolder.class)
    Path folder;

    @ParameterizedTest
    @ValueSource(
            strings = {
                "{\"by\":\"Sanna Teller\",\"details\":{\"kind\":\"examination\",\"condition\":\"sound\",\"flow\":\"171\","
                        + "\"minimum-flow\":\"160\",\"result\":\"passed\",\"signature\":\"S. T.\"},\"item\":\"U-1\","
                        + "\"on\":\"2026-03-01\",\"recorded\":\"2026-03-02T09:00:00Z\",\"sequence\":2}",
                "{\"by\":\"nurse\",\"details\":{\"kind\":\"medical\",\"copy-given\":false,\"result\":\"passed\","
                        + "\"topic\":\"clearance\"},\"item\":\"W-1\",\"on\":\"2026-03-01\","
                        + "\"recorded\":\"2026-03-02T09:00:00Z\",\"sequence\":3}",
                "{\"by\":\"stores\",\"details\":{\"kind\":\"registration\",\"item\":{\"kind\":\"unit\","
                        + "\"description\":\"set\",\"id\":\"U-1\",\"minimum-flow\":\"160\"}},\"item\":\"U-1\","
                        + "\"on\":\"2026-03-01\",\"recorded\":\"2026-03-02T09:00:00Z\",\"sequence\":1}"
            })
    void oldEntriesKeepTheirBytes(String text) {
        assertEquals(text, Canon.write(Canon.entry(text)));
    }

    @Test
    void aCopyThatNobodySpokeOfStaysUnsaid() {
        Details.Medical medical =
                (Details.Medical) Forms.details("medical", Map.of("result", "passed", "topic", "clearance"));
        assertEquals(Optional.empty(), medical.copyGiven());
        assertTrue(!Forms.values(medical).containsKey("copy-given"));
    }

    @Test
    void theNewFieldsSurviveExportAndImport() throws Exception {
        Map<String, String> form = Map.ofEntries(
                Map.entry("result", "passed"),
                Map.entry("condition", "sound"),
                Map.entry("operating-conditions", "two arms in use, 二"),
                Map.entry("intended-performance", "0.5 m/s"),
                Map.entry("performance-met", "yes"),
                Map.entry("cylinder-pressure", "264.0"),
                Map.entry("cylinder-full-pressure", "300"),
                Map.entry("designation", "examiner"),
                Map.entry("examiner-employer", "Tarn Haven Fabrication"));
        StringWriter out = new StringWriter();
        Instant now = Instant.parse("2026-03-02T09:00:00Z");
        LocalDate day = LocalDate.parse("2026-03-02");
        try (Store store = Store.open(folder.resolve("a.db"))) {
            Item plant = Forms.item("plant", Map.of("id", "X-1", "description", "arm"), Map.of());
            store.append(Draft.registering(plant, day, "stores"), now);
            store.append(new Draft("X-1", day, "Odran Pell", Forms.details("examination", form)), now);
            JsonLines.export(store, out);
        }
        try (Store copy = Store.open(folder.resolve("b.db"))) {
            JsonLines.importInto(copy, new BufferedReader(new StringReader(out.toString())));
            StringWriter again = new StringWriter();
            JsonLines.export(copy, again);
            assertEquals(out.toString(), again.toString());
            Map<String, String> read = Forms.values(copy.entry(2).orElseThrow().details());
            assertEquals("264.0", read.get("cylinder-pressure"));
            assertEquals("two arms in use, 二", read.get("operating-conditions"));
            assertEquals("true", read.get("performance-met"));
        }
    }
}
