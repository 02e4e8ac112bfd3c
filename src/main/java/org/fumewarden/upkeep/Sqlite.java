package org.fumewarden.upkeep;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import org.sqlite.SQLiteConfig;
import org.sqlite.SQLiteErrorCode;

/** Opens the store file and puts the faults of the database into words. */
final class Sqlite {
    /** Marks the file as ours: "FuWa" in ASCII. */
    static final int APPLICATION = 0x46755761;

    static final int VERSION = 1;
    private static final int CACHE_KIBIBYTES = 32_000;
    private static final int WAIT_MILLIS = 20_000;

    private Sqlite() {}

    /**
     * Opens the file.
     *
     * <p>Rollback journal with synchronous=EXTRA: when a commit returns, the pages and the removal of the journal are on the
     * disk, and the store at rest is one file.
     */
    static Connection open(Path file, boolean readOnly) throws SQLException {
        NativeLibrary.prepare();
        SQLiteConfig config = new SQLiteConfig();
        config.setReadOnly(readOnly);
        config.setJournalMode(SQLiteConfig.JournalMode.DELETE);
        config.setBusyTimeout(WAIT_MILLIS);
        config.setPragma(SQLiteConfig.Pragma.SYNCHRONOUS, "EXTRA");
        config.setPageSize(PAGE_BYTES);
        config.setCacheSize(-CACHE_KIBIBYTES);
        try {
            return config.createConnection("jdbc:sqlite:" + file.toAbsolutePath());
        } catch (LinkageError e) {
            throw unloadable(e);
        } catch (SQLException e) {
            if (e.getErrorCode() == 0 && e.getCause() != null && !(e.getCause() instanceof SQLException)) {
                throw unloadable(e);
            }
            throw e;
        }
    }

    private static StoreException unloadable(Throwable e) {
        return new StoreException(
                StoreException.Cause.FAULT,
                "the database cannot be started: its library may not be run from the temp folder "
                        + System.getProperty("java.io.tmpdir") + " (" + e.getMessage() + ").",
                "name a folder from which programs may be run: FUMEWARDEN_JAVA_OPTIONS=-Djava.io.tmpdir=/that/folder.");
    }

    static final int PAGE_BYTES = 8192;

    static void run(Connection connection, String sql) throws SQLException {
        try (Statement statement = connection.createStatement()) {
            statement.execute(sql);
        }
    }

    static int number(Connection connection, String sql) throws SQLException {
        try (Statement statement = connection.createStatement();
                var rows = statement.executeQuery(sql)) {
            return rows.next() ? rows.getInt(1) : 0;
        }
    }

    /** The fault in words; the extended code carries the primary code in its low byte. */
    static StoreException words(Path file, SQLException fault) {
        int code = fault.getErrorCode() & 0xff;
        if (code == SQLiteErrorCode.SQLITE_FULL.code) {
            return new StoreException(
                    StoreException.Cause.FULL,
                    file + " cannot grow: the disk or the file is full. Nothing of this entry was written.",
                    "free some space and enter it again; everything confirmed before is safe.");
        }
        if (code == SQLiteErrorCode.SQLITE_BUSY.code || code == SQLiteErrorCode.SQLITE_LOCKED.code) {
            return new StoreException(
                    StoreException.Cause.BUSY,
                    file + " was held by another writer for more than " + WAIT_MILLIS / 1000
                            + " s. Nothing of this entry was written.",
                    "close the other window or wait, then enter it again.");
        }
        if (code == SQLiteErrorCode.SQLITE_READONLY.code || code == SQLiteErrorCode.SQLITE_PERM.code) {
            return new StoreException(
                    StoreException.Cause.READ_ONLY,
                    file + " may be read but not written. Nothing of this entry was written.",
                    "give yourself write permission for the file and its folder, or name another with --store.");
        }
        if (code == SQLiteErrorCode.SQLITE_CORRUPT.code || code == SQLiteErrorCode.SQLITE_NOTADB.code) {
            return new StoreException(
                    StoreException.Cause.DAMAGED,
                    file + " is damaged or is not a store.",
                    "run \"store verify\" to see where, and \"store salvage\" to save what is intact.");
        }
        if (code == SQLiteErrorCode.SQLITE_CANTOPEN.code) {
            return new StoreException(
                    StoreException.Cause.MISSING,
                    file + " cannot be opened.",
                    "check that the folder exists and that you may write to it.");
        }
        return new StoreException(
                StoreException.Cause.FAULT, file + " failed: " + plain(fault), "check the disk, then try again.");
    }

    /** What the driver says, without its codes and its second word for the same. */
    private static String plain(SQLException fault) {
        return String.valueOf(fault.getMessage())
                .lines()
                .findFirst()
                .orElse("no reason given")
                .replaceAll("^\\[[A-Z_]+\\] *| *\\(.*", "");
    }
}
