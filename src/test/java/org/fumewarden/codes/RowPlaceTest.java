package org.fumewarden.codes;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.fumewarden.model.Citation;
import org.junit.jupiter.api.Test;

/** A row of another document than its table says no clause and no edition of the table. */
final class RowPlaceTest {
    private static final String TABLE = """
            id: some-limits
            kind: limits
            source: law
            clause: "Table Z-1"
            edition: "2024"
            confidence: read
            checked-on: 2026-11-25
            rows:
              - {agent: ozone, unit: ppm, twa: 0.1}
              - {agent: nickel, unit: mg/m3, twa: 1, source: copy}
              - {agent: cobalt, unit: mg/m3, twa: 1, source: copy, clause: "page 4"}
              - {agent: tin, unit: mg/m3, twa: 2, source: copy, clause: "page 5", edition: "1st"}
              - {agent: silver, unit: mg/m3, twa: 1, source: unlisted}
              - {agent: copper, unit: mg/m3, twa: 1, source: twin}
            """;

    @Test
    void aRowOfAnotherDocumentHasItsOwnPlaceOrNone() {
        Located root = YamlFiles.parse("table.yaml", TABLE);
        List<String> places = new TableReader(
                        "table.yaml",
                        root,
                        Affirmations.none(),
                        new EditedRows(),
                        Document.among(Map.of(
                                "copy", new Document("copy", "A copy", "May 1994", Set.of(), Optional.empty()),
                                "twin",
                                        new Document(
                                                "twin", "The law again", "2025", Set.of("law"), Optional.empty()))))
                .read().rows().stream()
                        .map(row -> row.row().ref().citation())
                        .map(Citation::place)
                        .toList();
        root.settle();
        assertEquals(
                List.of("Table Z-1, 2024", "May 1994", "page 4, May 1994", "page 5, 1st", "", "Table Z-1, 2024"),
                places);
    }
}
