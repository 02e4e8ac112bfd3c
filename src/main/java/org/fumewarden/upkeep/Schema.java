package org.fumewarden.upkeep;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.List;

/** The table and its indexes. */
final class Schema {
    /**
     * The previous hash, the body and the hash stand side by side in each record, so that an entry proves itself even when it is
     * found among the ruins of a broken file.
     */
    private static final List<String> STATEMENTS = List.of(
            """
            CREATE TABLE entry (
              sequence INTEGER PRIMARY KEY,
              previous BLOB NOT NULL,
              body TEXT NOT NULL,
              hash BLOB NOT NULL,
              item TEXT NOT NULL,
              serves TEXT NOT NULL,
              result TEXT NOT NULL,
              on_day INTEGER NOT NULL,
              corrects INTEGER
            )""",
            "CREATE INDEX entry_last ON entry (item, serves, result, on_day, sequence)",
            "CREATE INDEX entry_item ON entry (item, sequence)",
            "CREATE INDEX entry_registered ON entry (item, sequence) WHERE serves = 'registration'",
            "CREATE INDEX entry_closing ON entry (item, on_day, sequence) WHERE result IN ('failed', 'withdrawn')",
            "CREATE UNIQUE INDEX entry_corrects ON entry (corrects) WHERE corrects IS NOT NULL",
            "CREATE TRIGGER entry_not_edited BEFORE UPDATE ON entry BEGIN SELECT RAISE(ABORT, 'entries are never edited'); END",
            "CREATE TRIGGER entry_not_deleted BEFORE DELETE ON entry BEGIN SELECT RAISE(ABORT, 'entries are never deleted'); END");

    private Schema() {}

    /** Creates the table in an empty file; leaves a store as it is; refuses any other file. */
    static void prepare(Path file, Connection connection, boolean readOnly) throws SQLException {
        if (check(file, connection)) {
            return;
        }
        if (readOnly) {
            throw new StoreException(
                    StoreException.Cause.DAMAGED,
                    file + " holds no entries and no table.",
                    "name another file with --store.");
        }
        Sqlite.run(connection, "BEGIN IMMEDIATE");
        // Another process may have made the table between the look and the lock.
        if (!check(file, connection)) {
            for (String statement : STATEMENTS) {
                Sqlite.run(connection, statement);
            }
            Sqlite.run(connection, "PRAGMA application_id = " + Sqlite.APPLICATION);
            Sqlite.run(connection, "PRAGMA user_version = " + Sqlite.VERSION);
        }
        Sqlite.run(connection, "COMMIT");
    }

    private static boolean check(Path file, Connection connection) throws SQLException {
        int application = Sqlite.number(connection, "PRAGMA application_id");
        int version = Sqlite.number(connection, "PRAGMA user_version");
        if (application == Sqlite.APPLICATION && version == Sqlite.VERSION) {
            return true;
        }
        if (application == Sqlite.APPLICATION) {
            throw StoreException.refused(
                    file + " has the store version " + version + "; this program knows version " + Sqlite.VERSION + ".",
                    "use the newer program, or export there and import here.");
        }
        if (Sqlite.number(connection, "SELECT count(*) FROM sqlite_schema") > 0 || application != 0) {
            throw StoreException.refused(
                    file + " is a database of another program.", "name another file with --store.");
        }
        return false;
    }
}
