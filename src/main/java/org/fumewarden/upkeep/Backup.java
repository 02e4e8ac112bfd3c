package org.fumewarden.upkeep;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import org.fumewarden.codes.OutputFile;

/** A copy of a whole store, and the way back. A copy that does not verify is not kept. */
public final class Backup {
    private Backup() {}

    /** Copies a store into a new file, also while others write. */
    public static Head write(Path store, Path target) throws IOException {
        return copied(
                store,
                new OutputFile("", target, false).orElse("name a new file.").admit(),
                target);
    }

    /** Makes a store of a backup, at a place where none is. */
    public static Head restore(Path backup, Path store) throws IOException {
        OutputFile place = new OutputFile("--store", store, false)
                .orElse("move it away first, or name another place; no register is ever overwritten.")
                .admit();
        Verification found = StoreCheck.verify(backup);
        if (!found.intact()) {
            throw new StoreException(
                    StoreException.Cause.DAMAGED,
                    backup + " is not intact. " + found.first().orElseThrow().text(),
                    "take an earlier backup, or run \"store salvage\" on this one.");
        }
        return copied(backup, place, store);
    }

    private static Head copied(Path from, OutputFile place, Path target) throws IOException {
        Path beside = OutputFile.beside(target);
        try {
            Store.read(from).close();
            whole(from, beside);
            Verification copy = StoreCheck.verify(beside);
            if (!copy.intact()) {
                throw new StoreException(
                        StoreException.Cause.DAMAGED,
                        from + " is not intact, so no copy of it is kept. "
                                + copy.first().orElseThrow().text(),
                        "run \"store salvage\" to save what is intact.");
            }
            place.take(beside);
            return copy.head();
        } finally {
            Files.deleteIfExists(beside);
        }
    }

    /** Writes one state of the store into a file that is not there yet, whatever others write meanwhile. */
    private static void whole(Path from, Path copy) {
        try (Connection connection = Sqlite.open(Interrupted.settled(from), true);
                PreparedStatement into = connection.prepareStatement("VACUUM INTO ?")) {
            into.setString(1, copy.toAbsolutePath().toString());
            into.execute();
        } catch (SQLException e) {
            throw Sqlite.words(copy, e);
        }
    }
}
