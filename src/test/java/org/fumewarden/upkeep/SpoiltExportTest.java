package org.fumewarden.upkeep;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedReader;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.fumewarden.codes.InputException;
import org.fumewarden.codes.Problem;
import org.fumewarden.codes.Spoilt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** A spoilt export is imported whole or refused in words; a changed line is never taken in. */
@Timeout(value = 1, unit = TimeUnit.HOURS, threadMode = Timeout.ThreadMode.SEPARATE_THREAD)
final class SpoiltExportTest {
    @TempDir
    private Path folder;

    @Test
    void importFindsEverySpoiltLine() throws IOException {
        String export = export();
        Spoilt.run("exports", 100, List.of(export.getBytes(StandardCharsets.UTF_8)), bytes -> {
            Head head = importInto(bytes, false);
            assertTrue(export.contains(head.hash()), "another chain was taken in");
        });
    }

    @Test
    void salvagedImportReadsOrRefuses() throws IOException {
        Spoilt.run(
                "salvaged exports", 100, List.of(export().getBytes(StandardCharsets.UTF_8)), b -> importInto(b, true));
    }

    private String export() throws IOException {
        StringWriter out = new StringWriter();
        try (Store store = Store.open(folder.resolve("yard.db"))) {
            if (store.head().entries() == 0) {
                store.append(Samples.registering(Samples.powered("U-014")), Samples.NOW);
                store.append(Samples.registering(Samples.powered("U-015")), Samples.NOW);
                store.append(Samples.examined("U-014", "2026-03-02", Result.PASSED), Samples.NOW);
                store.append(Samples.repaired("U-015", "2026-03-02"), Samples.NOW);
            }
            JsonLines.export(store, out);
        }
        return out.toString();
    }

    private Head importInto(byte[] bytes, boolean salvaged) throws IOException {
        Path file = folder.resolve("import.db");
        try (Store store = Store.open(file);
                BufferedReader in = new BufferedReader(
                        new InputStreamReader(new ByteArrayInputStream(bytes), StandardCharsets.UTF_8))) {
            return salvaged ? JsonLines.importSalvaged(store, in) : JsonLines.importInto(store, in);
        } catch (StoreException e) {
            throw new InputException(
                    new Problem("export", 0, "", String.valueOf(e.getMessage()), String.valueOf(e.remedy())));
        } finally {
            Files.deleteIfExists(file);
            Files.deleteIfExists(folder.resolve("import.db-wal"));
            Files.deleteIfExists(folder.resolve("import.db-shm"));
        }
    }
}
