package org.fumewarden.upkeep;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class StoreTest {
    @TempDir(factory = MemoryFolder.class)
    Path folder;

    private Store store() {
        return Store.open(folder.resolve("log.db"));
    }

    @Test
    void entriesComeBackAsTheyWereWritten() {
        try (Store store = store()) {
            LogEntry registered = store.append(Samples.registering(Samples.powered("U-014")), Samples.NOW);
            LogEntry examined = store.append(Samples.examined("U-014", "2026-03-02", Result.PASSED), Samples.NOW);
            assertEquals(List.of(registered, examined), store.entriesOf("U-014"));
            assertEquals(Optional.of(Samples.powered("U-014")), store.item("U-014"));
        }
        try (Store again = Store.read(folder.resolve("log.db"))) {
            assertEquals(2, again.head().entries());
        }
        assertTrue(StoreCheck.verify(folder.resolve("log.db")).intact());
        assertEquals(List.of("log.db"), filesAtRest());
    }

    private List<String> filesAtRest() {
        return List.of(folder.toFile().list());
    }

    @Test
    void aLaterRegistrationChangesTheItemAndKeepsTheEarlierOne() {
        try (Store store = store()) {
            store.append(Samples.registering(Samples.powered("U-014")), Samples.NOW);
            Item.Unit shared = Samples.unit("U-014", Map.of("shared", List.of("true")));
            store.append(Samples.registering(shared), Samples.NOW);
            assertEquals(Optional.of(shared), store.item("U-014"));
            assertEquals(2, store.entriesOf("U-014").size());
        }
    }

    @Test
    void theDatabaseItselfRefusesToEditOrDelete() throws SQLException {
        try (Store store = store()) {
            store.append(Samples.registering(Samples.powered("U-014")), Samples.NOW);
        }
        try (Connection raw = Sqlite.open(folder.resolve("log.db"), false)) {
            assertThrows(SQLException.class, () -> Sqlite.run(raw, "UPDATE entry SET item = 'U-015'"));
            assertThrows(SQLException.class, () -> Sqlite.run(raw, "DELETE FROM entry"));
        }
    }

    @Test
    void aBatchIsWrittenWholeOrNotAtAll() {
        try (Store store = store()) {
            StoreException refused = assertThrows(
                    StoreException.class,
                    () -> store.appendAll(
                            List.of(
                                    Samples.registering(Samples.powered("U-014")),
                                    Samples.checked("U-999", "2026-03-02", Result.PASSED)),
                            Samples.NOW));
            assertTrue(refused.text().contains("\"U-999\" is not in the register.\nRegister it first"));
            assertEquals(0, store.head().entries());
        }
    }

    @Test
    void oneIdNamesOneKindOfThing() {
        try (Store store = store()) {
            store.append(Samples.registering(Samples.powered("014")), Samples.NOW);
            StoreException refused = assertThrows(
                    StoreException.class,
                    () -> store.append(
                            Samples.registering(Samples.wearer("014", "Odran Pell", List.of())), Samples.NOW));
            assertTrue(refused.text().contains("already the id of a unit"));
        }
    }

    @Test
    void aCorrectionTakesThePlaceOfTheEarlierEntryAndBothStay() {
        try (Store store = store()) {
            store.append(Samples.registering(Samples.powered("U-014")), Samples.NOW);
            LogEntry wrong = store.append(Samples.examined("U-014", "2026-03-02", Result.PASSED), Samples.NOW);
            Draft right = new Draft(
                    "U-014",
                    Samples.day("2026-02-02"),
                    "Sanna Teller",
                    new Details.Correction(
                            wrong.sequence(),
                            "wrong month",
                            Optional.of(Samples.examined("U-014", "2026-02-02", Result.PASSED)
                                    .details())));
            store.append(right, Samples.NOW);
            assertEquals(
                    Samples.day("2026-02-02"),
                    store.latest("U-014", "examination").orElseThrow().on());
            assertEquals(3, store.entriesOf("U-014").size());
            assertEquals(List.of(wrong.sequence()), store.superseded("U-014"));
            StoreException twice = assertThrows(StoreException.class, () -> store.append(right, Samples.NOW));
            assertTrue(twice.getMessage().contains("was corrected before"));
        }
    }

    @Test
    void aVoidedEntryNoLongerCounts() {
        try (Store store = store()) {
            store.append(Samples.registering(Samples.powered("U-014")), Samples.NOW);
            LogEntry wrong = store.append(Samples.checked("U-014", "2026-03-02", Result.FAILED), Samples.NOW);
            assertEquals(UnitState.Standing.WITHDRAWN, store.state("U-014").standing());
            store.append(
                    new Draft(
                            "U-014",
                            Samples.day("2026-03-02"),
                            "Odran Pell",
                            new Details.Correction(wrong.sequence(), "meant U-041", Optional.empty())),
                    Samples.NOW);
            assertTrue(store.state("U-014").inService());
        }
    }

    @Test
    void aFailedCheckClosesTheUnitUntilARepairAndThenAPassedExamination() {
        try (Store store = store()) {
            store.append(Samples.registering(Samples.powered("U-014")), Samples.NOW);
            store.append(Samples.checked("U-014", "2026-03-02", Result.FAILED), Samples.NOW);
            assertTrue(store.state("U-014").because().contains("repaired and then pass"));
            store.append(Samples.checked("U-014", "2026-03-02", Result.PASSED), Samples.NOW);
            assertTrue(!store.state("U-014").inService(), "a passed check alone does not open it");
            store.append(Samples.examined("U-014", "2026-03-02", Result.PASSED), Samples.NOW);
            assertTrue(!store.state("U-014").inService(), "an examination before the repair does not open it");
            store.append(Samples.repaired("U-014", "2026-03-03"), Samples.NOW);
            assertTrue(!store.state("U-014").inService(), "a repair alone does not open it");
            store.append(Samples.examined("U-014", "2026-03-03", Result.FAILED), Samples.NOW);
            store.append(Samples.examined("U-014", "2026-03-03", Result.PASSED), Samples.NOW);
            assertTrue(!store.state("U-014").inService(), "a failed examination asks for another repair");
            store.append(Samples.repaired("U-014", "2026-03-03"), Samples.NOW);
            store.append(Samples.examined("U-014", "2026-03-03", Result.PASSED), Samples.NOW);
            assertTrue(store.state("U-014").inService());
        }
    }

    @Test
    void aWithdrawalOnTopOfAFaultDoesNotForgetTheFault() {
        try (Store store = store()) {
            store.append(Samples.registering(Samples.powered("U-014")), Samples.NOW);
            store.append(Samples.checked("U-014", "2026-03-01", Result.FAILED), Samples.NOW);
            store.append(
                    new Draft(
                            "U-014",
                            Samples.day("2026-03-02"),
                            "stores",
                            new Details.Withdrawal("put on the shelf", false, false)),
                    Samples.NOW);
            store.append(Samples.examined("U-014", "2026-03-03", Result.PASSED), Samples.NOW);
            assertTrue(
                    store.state("U-014").because().contains("repaired"),
                    store.state("U-014").because());
        }
    }

    @Test
    void aFlowBelowTheMakersMinimumFailsWhateverTheExaminerWrote() {
        Examination claimed = (Examination) Forms.details(
                "examination",
                Map.of("result", "passed", "condition", "sound", "flow", "159.9", "minimum-flow", "160"));
        assertEquals(Result.FAILED, claimed.result());
    }

    @Test
    void whatWasWithdrawnForGoodTakesNoFurtherEntries() {
        try (Store store = store()) {
            store.append(Samples.registering(Samples.powered("U-014")), Samples.NOW);
            store.append(
                    new Draft(
                            "U-014",
                            Samples.day("2026-03-02"),
                            "stores",
                            new Details.Withdrawal("housing cracked", true, true)),
                    Samples.NOW);
            assertThrows(
                    StoreException.class,
                    () -> store.append(Samples.examined("U-014", "2026-03-03", Result.PASSED), Samples.NOW));
        }
    }

    @Test
    void filesOfOtherProgramsAreRefused() throws Exception {
        Path other = folder.resolve("other.db");
        try (Connection raw = Sqlite.open(other, false)) {
            Sqlite.run(raw, "CREATE TABLE shopping (item TEXT)");
        }
        assertTrue(assertThrows(StoreException.class, () -> Store.open(other))
                .getMessage()
                .contains("another program"));
        Path text = Files.writeString(
                folder.resolve("notes.txt"), "not a database, but long enough to look at twice\n".repeat(40));
        assertEquals(
                StoreException.Cause.DAMAGED,
                assertThrows(StoreException.class, () -> Store.open(text)).reason());
        assertEquals(
                StoreException.Cause.MISSING,
                assertThrows(StoreException.class, () -> Store.read(folder.resolve("none.db")))
                        .reason());
    }
}
