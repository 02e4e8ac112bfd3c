package org.fumewarden.upkeep;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The due list reads by index: what it reads grows with the items, not with the log. */
class DueReadingTest {
    @TempDir(factory = MemoryFolder.class)
    Path folder;

    @Test
    void everyQueryOfTheDueListSearchesAnIndex() throws Exception {
        Path file = folder.resolve("yard.db");
        new LargeYard(20, 400).fill(file);
        List<String> scans = new ArrayList<>();
        try (Connection connection = Sqlite.open(file, true)) {
            for (String query : List.of(StoreQueries.REGISTERED, StoreQueries.LAST_DONE, StoreQueries.FIRST_CLOSING)) {
                try (Statement statement = connection.createStatement();
                        ResultSet plan = statement.executeQuery("EXPLAIN QUERY PLAN " + query.replace("?", "1"))) {
                    while (plan.next()) {
                        String step = plan.getString("detail");
                        if (step.startsWith("SCAN") && !step.contains("entry_registered")) {
                            scans.add(query + ": " + step);
                        }
                    }
                }
            }
        }
        assertEquals(List.of(), scans);
    }
}
