package org.fumewarden.report.upkeep;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.Period;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.fumewarden.codes.CodeBook;
import org.fumewarden.codes.RuleFolder;
import org.fumewarden.model.Duty;
import org.fumewarden.model.Force;
import org.fumewarden.model.Frequency;
import org.fumewarden.model.Keep;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.yaml.snakeyaml.Yaml;

/** Every duty table of every code parses, and its conditions use only the vocabulary of facts. */
class DutyTablesTest {
    private static final Path RULES = Path.of("rules");

    private static List<Map<String, Object>> rows(Path table) throws IOException {
        Map<String, Object> root = new Yaml().load(Files.readString(table));
        @SuppressWarnings("unchecked")
        List<Map<String, Object>> rows = (List<Map<String, Object>>) root.get("rows");
        return rows;
    }

    private static Map<String, Duty> all() {
        Map<String, Duty> duties = new HashMap<>();
        for (String code : RuleFolder.shipped().codes()) {
            CodeBook.read(RuleFolder.shipped(), code).rows(LocalDate.of(2026, 3, 2)).stream()
                    .filter(Duty.class::isInstance)
                    .map(Duty.class::cast)
                    .forEach(d -> duties.put(d.id(), d));
        }
        return duties;
    }

    @Test
    void everyConditionUsesTheVocabularyOfFacts() throws IOException {
        Map<String, Set<String>> facts = new HashMap<>();
        for (Map<String, Object> row : rows(RULES.resolve("shared/tables/duty-facts.yaml"))) {
            @SuppressWarnings("unchecked")
            List<String> items = (List<String>) row.get("items");
            facts.put(((String) row.get("set")).substring("duty-".length()), new HashSet<>(items));
        }
        List<String> wrong = new ArrayList<>();
        all().values().forEach(d -> d.when().stream()
                .filter(c -> !facts.getOrDefault(c.circumstance(), Set.of()).containsAll(c.values()))
                .forEach(c -> wrong.add(d.id() + " " + c)));
        assertEquals(List.of(), wrong);
    }

    @Test
    void everyFactIsAskedForBySomeDuty() throws IOException {
        Set<String> asked = new HashSet<>();
        all().values().forEach(d -> d.when().forEach(c -> asked.add(c.circumstance())));
        for (Map<String, Object> row : rows(RULES.resolve("shared/tables/duty-facts.yaml"))) {
            assertTrue(asked.contains(((String) row.get("set")).substring("duty-".length())), row.toString());
        }
    }

    /** Intervals, forces and keeping rules as the clauses give them. */
    @ParameterizedTest(name = "{0}")
    @CsvSource({
        // COSHH regulation 9(2)(a): fourteen months; regulation 9(4): five years
        "gb-lev-14m, P14M, LAW, record made + P5Y",
        // COSHH schedule 4
        "gb-lev-sch4-blasting, P1M, LAW, record made + P5Y",
        "gb-lev-sch4-abrading, P6M, LAW, record made + P5Y",
        "gb-lev-sch4-casting, P6M, LAW, record made + P5Y",
        "gb-lev-sch4-jute, P1M, LAW, record made + P5Y",
        // L5: the month is the approved code
        "gb-rpe-exam-monthly, P1M, ACOP, record made + P5Y",
        "gb-rpe-exam-occasional, P3M, ACOP, record made + P5Y",
        // trade scheme practice, not law
        "gb-fit-test-periodic, P2Y, PRACTICE, record made + P5Y",
        // CLAW regulation 9
        "gb-lead-air-3m, P3M, LAW, last entry + P5Y",
        "gb-lead-air-12m, P1Y, LAW, last entry + P5Y",
        // CAR 2012 regulation 22
        "gb-asbestos-medical-licensed, P2Y, LAW, last entry + P40Y",
        "gb-asbestos-medical-nnlw, P3Y, LAW, last entry + P40Y",
        // 29 CFR 1910.134(f)(2), (h)(3)(i)(B), (k)(5)
        "us-fit-test, P1Y, LAW, until next record",
        "us-inspect-emergency, P1M, LAW, until next record",
        "us-training-annual, P1Y, LAW, not stated",
        // 29 CFR 1910.1025(j)(2)(i), (n)(2)
        "us-lead-blood-high, P2M, LAW, later of record made + P40Y and employment end + P20Y",
        "us-lead-blood-routine, P6M, LAW, later of record made + P40Y and employment end + P20Y"
    })
    void rowsSayWhatTheClauseSays(String id, String period, Force force, String keep) throws IOException {
        Duty duty = all().get(id);
        assertEquals(Frequency.MAX_INTERVAL, duty.frequency());
        assertEquals(Optional.of(period), duty.period().map(Period::toString));
        assertEquals(force, duty.force());
        assertEquals(Keep.parse(keep), Optional.of(duty.keep()));
    }

    @Test
    void theWholeListIsThere() throws IOException {
        Map<String, Duty> all = all();
        assertEquals(48, all.keySet().stream().filter(k -> k.startsWith("gb-")).count());
        assertEquals(106, all.keySet().stream().filter(k -> k.startsWith("us-")).count());
        assertTrue(all.values().stream().allMatch(d -> !d.appliesTo().isEmpty()));
    }
}
