package org.fumewarden.upkeep;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;

/** A store whose writer was ended inside a commit: beside it lies the journal that undoes what was not confirmed. */
final class Interrupted {
    private Interrupted() {}

    private static Path journal(Path file) {
        return file.resolveSibling(file.getFileName() + "-journal");
    }

    private static boolean commit(Path file) {
        try {
            return Files.isRegularFile(journal(file)) && Files.size(journal(file)) > 0;
        } catch (IOException e) {
            return false;
        }
    }

    /** The file to read: itself, with the unconfirmed undone; where it may not be written, a copy of which that is true. */
    static Path settled(Path file) throws SQLException {
        return commit(file) ? undone(file) : file;
    }

    private static Path undone(Path file) throws SQLException {
        Path parent = file.toAbsolutePath().getParent();
        if (Files.isWritable(file) && Files.isWritable(parent) && Files.isWritable(journal(file))) {
            undo(file);
            return file;
        }
        try (Connection connection = Sqlite.open(file, true)) {
            // The journal may be that of a writer who is alive: then the file can be read as it is.
            Sqlite.number(connection, "SELECT count(*) FROM sqlite_schema");
            return file;
        } catch (SQLException e) {
            return copy(file);
        }
    }

    private static Path copy(Path file) throws SQLException {
        try {
            Path folder = Files.createTempDirectory("fumewarden-read");
            Path copy = folder.resolve(file.getFileName());
            folder.toFile().deleteOnExit();
            copy.toFile().deleteOnExit();
            Files.copy(file, copy);
            Files.copy(journal(file), journal(copy));
            copy.toFile().setWritable(true);
            journal(copy).toFile().setWritable(true);
            undo(copy);
            return copy;
        } catch (IOException e) {
            throw new SQLException("a copy to read from cannot be made: " + e.getMessage(), e);
        }
    }

    /** The first read by a writer undoes; it waits for one that is still alive. */
    private static void undo(Path file) throws SQLException {
        try (Connection connection = Sqlite.open(file, false)) {
            Sqlite.number(connection, "SELECT count(*) FROM sqlite_schema");
        }
    }
}
