package org.fumewarden.upkeep;

import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;

/** Opens the file of a store, and heals or reads around what a killed writer left in it. */
final class StoreOpening {
    private StoreOpening() {}

    /** Opens for reading and writing, and creates the file when there is none. */
    static Store forWriting(Path file) {
        if (Files.isRegularFile(file) && !Files.isWritable(file)) {
            throw new StoreException(
                    StoreException.Cause.READ_ONLY,
                    file + " may be read but not written.",
                    "give yourself write permission for the file and its folder, or name another with --store.");
        }
        return open(file, false);
    }

    /** Opens for reading only. */
    static Store forReading(Path file) {
        if (!Files.exists(file)) {
            throw new StoreException(
                    StoreException.Cause.MISSING,
                    file + " does not exist.",
                    "register something first, or name the file with --store.");
        }
        return open(file, true);
    }

    private static Store open(Path file, boolean readOnly) {
        if (Files.isDirectory(file)) {
            throw StoreException.refused(file + " is a folder, not a store.", "name a file inside it.");
        }
        try {
            // A writer was ended inside a commit: what it had not confirmed is undone, in the file or in a copy of it.
            return opened(file, readOnly ? Interrupted.settled(file) : file, readOnly);
        } catch (SQLException e) {
            throw Sqlite.words(file, e);
        }
    }

    private static Store opened(Path file, Path at, boolean readOnly) throws SQLException {
        Connection connection = Sqlite.open(at, readOnly);
        try {
            Schema.prepare(file, connection, readOnly);
            return new Store(file, at, connection);
        } catch (SQLException | StoreException e) {
            quietly(connection);
            throw e;
        }
    }

    static void quietly(Connection connection) {
        try {
            if (connection != null) {
                connection.close();
            }
        } catch (SQLException e) {
            // The fault that led here is the one to report.
        }
    }
}
