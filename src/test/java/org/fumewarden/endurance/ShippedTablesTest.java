package org.fumewarden.endurance;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ShippedTablesTest {
    private static final Set<String> CONFIDENCES = Set.of("cross-checked", "read", "derived", "practice", "memory");

    @ParameterizedTest
    @ValueSource(
            strings = {
                "gas-filter-tests",
                "cartridge-tests",
                "gas-filter-classes",
                "low-boiler-times",
                "filter-use-times",
                "adsorption-model",
                "adsorbed-vapours",
                "service-life-rules",
                "work-rates",
                "standard-atmosphere",
                "blower-model",
                "pack-behaviour",
                "pack-cold",
                "us-minimum-shades",
                "us-suggested-shades"
            })
    void everyTableNamesItsSourceClauseEditionUnitAndConfidence(String name) {
        Map<String, Object> table = Tables.table(name);
        for (String head : List.of("id", "kind", "source", "clause", "edition", "unit", "confidence", "checked-on")) {
            assertTrue(table.containsKey(head), name + " lacks " + head);
        }
        assertTrue(name.equals(table.get("id")), name);
        assertTrue(CONFIDENCES.contains(table.get("confidence")), name);
        assertFalse(Tables.rows(name).isEmpty(), name);
        Tables.rows(name).stream()
                .filter(row -> row.containsKey("confidence"))
                .forEach(row -> assertTrue(CONFIDENCES.contains(row.get("confidence")), name + row));
    }
}
