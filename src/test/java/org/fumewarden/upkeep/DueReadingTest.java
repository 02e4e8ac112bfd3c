package org.fumewarden.upkeep;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.Statement;
import java.time.LocalDate;
import java.time.Period;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
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
            for (String query : StoreQueries.readByDue()) {
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

    /** 20 times the entries over the same 200 units: were the log scanned, the time would grow 20 times. */
    @Test
    void aLongerLogOverTheSameUnitsCostsLittleMore() {
        Path small = folder.resolve("small.db");
        Path large = folder.resolve("large.db");
        new LargeYard(200, 1_000).fill(small);
        new LargeYard(200, 20_000).fill(large);
        best(small);
        double growth = (double) best(large) / best(small);
        assertTrue(growth < 8, "the time grew " + growth + " times");
    }

    private static long best(Path file) {
        List<Duty> duties = List.of(Samples.duty("monthly", "P1M", Subject.UNIT, "examination", Force.ACOP));
        long best = Long.MAX_VALUE;
        for (int turn = 0; turn < 5; turn++) {
            long started = System.nanoTime();
            try (Store store = Store.read(file)) {
                new DueList(store, duties, LocalDate.parse("2026-03-02"), Period.ofDays(7))
                        .compute(LargeYard.facts(), Optional.empty());
            }
            best = Math.min(best, System.nanoTime() - started);
        }
        return best;
    }
}
