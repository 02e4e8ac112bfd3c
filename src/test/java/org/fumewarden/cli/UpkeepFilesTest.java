package org.fumewarden.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** What the register and the log take from files and write into files. */
final class UpkeepFilesTest extends UpkeepAtAShell {
    @Test
    void filesInCsvAndYamlAreTakenWholeOrNotAtAll() throws Exception {
        Path csv = Files.writeString(
                folder.resolve("checks.csv"),
                "kind,item,on,by,result,remarks\r\nbefore-use-check,U-014,2026-03-02,Odran Pell,passed,'=1+1\r\nbefore-use-check,U-014,2026-03-03,Odran Pell,passed,\"tidy, dry\"\r\n");
        assertEquals(0, run(new EntryCommand(), "--file", csv.toString()), err.toString());
        Path yaml = Files.writeString(
                folder.resolve("more.yaml"),
                "- {kind: repair, item: U-014, on: 2026-03-04, by: workshop, work: hose}\n- {kind: repair, item: U-999, on: 2026-03-04, by: workshop, work: hose}\n");
        assertEquals(2, run(new EntryCommand(), "--file", yaml.toString()));
        run(new StoreCommand(), "verify");
        assertTrue(out.toString().startsWith("Intact: 4 entries."), out.toString());
    }

    @Test
    void anExportGoesIntoANewStoreAndNeverOverAFile() throws Exception {
        examined("2026-03-02", "171");
        Path file = folder.resolve("all.jsonl");
        assertEquals(0, run(new StoreCommand(), "export", file.toString()), err.toString());
        assertEquals(2, run(new StoreCommand(), "export", file.toString()));
        assertTrue(err.toString().contains("is there already and is not overwritten"));
        byte[] before = Files.readAllBytes(file);
        Files.delete(folder.resolve("log.db"));
        assertEquals(0, run(new StoreCommand(), "import", file.toString()), err.toString());
        assertEquals(
                0,
                run(new StoreCommand(), "export", folder.resolve("again.jsonl").toString()));
        assertEquals(new String(before), Files.readString(folder.resolve("again.jsonl")));
    }

    @Test
    void aBrokenStoreIsNamedAndSalvaged() throws Exception {
        examined("2026-03-02", "171");
        byte[] bytes = Files.readAllBytes(folder.resolve("log.db"));
        String text = new String(bytes, java.nio.charset.StandardCharsets.ISO_8859_1);
        bytes[text.indexOf("\"condition\":\"sound\"") + 14] ^= 1;
        Files.write(folder.resolve("log.db"), bytes);
        assertEquals(3, run(new StoreCommand(), "verify"));
        assertTrue(out.toString().startsWith("Broken. First: entry 3 was changed"), out.toString());
        assertEquals(
                3,
                run(new StoreCommand(), "salvage", folder.resolve("rest.jsonl").toString()),
                err.toString());
        assertTrue(out.toString().contains("2 entries saved"), out.toString());
    }

    @Test
    void papersAndCalendarAreWritten() {
        examined("2026-01-31", "171");
        // Its next examination was due on 2026-02-28, long ago.
        assertEquals(3, run(new RecordCommand(), "U-014", "--sheet", "card", "--format", "html"), err.toString());
        assertTrue(out.toString().contains("DO NOT USE"), out.toString());
        assertTrue(out.toString().contains("Before use: unit U-014"));
        assertEquals(0, run(new RecordCommand(), "--sheet", "programme"), err.toString());
        assertTrue(out.toString().contains("Respirator programme"));
        // The agent and the confined space are not recorded, so not every day can be said.
        assertEquals(3, run(new CalendarCommand(), "--on", "2026-02-01"), err.toString());
        assertTrue(
                out.toString().contains("SUMMARY:Record this: the agents of the task. Until then no due date can"),
                out.toString());
        assertTrue(out.toString().contains("BEGIN:VTODO") && out.toString().contains("DUE;VALUE=DATE:20260228"));
        assertEquals(0, run(new StoreCommand(), "retention", "--all"), err.toString());
        assertTrue(out.toString().contains("Nothing was discarded"));
        assertEquals(2, run(new RecordCommand(), "U-015"));
        assertTrue(
                err.toString().contains("U-015 is not in the register.\nRead the number on it again"), err.toString());
        assertEquals(2, run(new DueCommand(), "--within", "soon"));
        assertEquals(2, run(new DueCommand(), "--code", "xx"));
    }
}
