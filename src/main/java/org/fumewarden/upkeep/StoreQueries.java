package org.fumewarden.upkeep;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;

/** The questions asked of the table; each reads by index only what it must. */
final class StoreQueries {
    private static final String HOLDS = " AND NOT EXISTS (SELECT 1 FROM entry c WHERE c.corrects = e.sequence) ";

    /** The due list asks this once, and the next two for every item or duty. */
    static final String REGISTERED = "SELECT body, sequence FROM entry WHERE serves = 'registration' AND sequence IN "
            + "(SELECT max(sequence) FROM entry WHERE serves = 'registration' GROUP BY item) ORDER BY item";

    static final String LAST_DONE =
            "SELECT on_day, sequence FROM entry e" + " WHERE item = ? AND serves = ? AND result = ? AND on_day <= ?"
                    + HOLDS + "ORDER BY on_day DESC, sequence DESC LIMIT 1";
    static final String FIRST_CLOSING =
            "SELECT min(on_day) FROM entry e" + " WHERE item = ? AND result IN ('failed', 'withdrawn')" + HOLDS;

    private static final int LATELY = 500;

    private final Path file;
    private final PreparedStatement head;
    private final PreparedStatement origin;
    private final PreparedStatement lately;
    private final PreparedStatement one;
    private final PreparedStatement registered;
    private final PreparedStatement allRegistered;
    private final PreparedStatement ofItem;
    private final PreparedStatement lastDone;
    private final PreparedStatement closing;
    private final PreparedStatement after;
    private final PreparedStatement correcting;

    StoreQueries(Path file, Connection connection) throws SQLException {
        this.file = file;
        head = connection.prepareStatement("SELECT sequence, hash FROM entry ORDER BY sequence DESC LIMIT 1");
        origin = connection.prepareStatement("SELECT hash FROM entry ORDER BY sequence LIMIT 1");
        lately = connection.prepareStatement(
                "SELECT body, sequence FROM entry WHERE sequence > (SELECT max(sequence) FROM entry) - " + LATELY
                        + " ORDER BY sequence");
        one = connection.prepareStatement("SELECT body, sequence FROM entry WHERE sequence = ?");
        registered = connection.prepareStatement(
                "SELECT body, sequence FROM entry WHERE item = ? AND serves = 'registration' ORDER BY sequence DESC LIMIT 1");
        allRegistered = connection.prepareStatement(REGISTERED);
        ofItem = connection.prepareStatement("SELECT body, sequence FROM entry WHERE item = ? ORDER BY sequence");
        lastDone = connection.prepareStatement(LAST_DONE);
        closing = connection.prepareStatement(FIRST_CLOSING);
        after = connection.prepareStatement("SELECT body, sequence FROM entry e WHERE item = ? AND on_day >= ?"
                + " AND (result IN ('failed', 'withdrawn') OR serves IN ('repair', 'replacement', 'examination')"
                + " OR serves LIKE 'air-test/%')" + HOLDS + "ORDER BY on_day, sequence");
        correcting = connection.prepareStatement("SELECT 1 FROM entry WHERE corrects = ?");
    }

    <T> T ask(Callable<T> question) {
        try {
            return question.call();
        } catch (SQLException e) {
            throw Sqlite.words(file, e);
        } catch (RuntimeException e) {
            throw e;
        } catch (Exception e) {
            throw new IllegalStateException(e);
        }
    }

    Head head() throws SQLException {
        try (ResultSet rows = head.executeQuery()) {
            return rows.next() ? Head.of(rows.getLong(1), rows.getBytes(2)) : Head.of(0, Canon.origin());
        }
    }

    /** The hash of the first entry, which tells one store from another; empty in an empty store. */
    String origin() throws SQLException {
        try (ResultSet rows = origin.executeQuery()) {
            return rows.next() ? HexFormat.of().formatHex(rows.getBytes(1)) : "";
        }
    }

    /** The last entries as they were written, the earliest of them first; not more than are soon read. */
    List<LogEntry> lately() throws SQLException {
        return all(lately);
    }

    Optional<LogEntry> entry(long sequence) throws SQLException {
        one.setLong(1, sequence);
        return first(one);
    }

    /** The item with an id, or with the same id in the composed form in which new ids are kept. */
    Optional<Item> item(String id) throws SQLException {
        registered.setString(1, id);
        Optional<LogEntry> found = first(registered);
        if (found.isEmpty()) {
            registered.setString(1, Given.composed(id));
            found = first(registered);
        }
        return found.map(StoreQueries::registeredItem);
    }

    List<Item> items() throws SQLException {
        return all(allRegistered).stream().map(StoreQueries::registeredItem).toList();
    }

    List<LogEntry> entriesOf(String item) throws SQLException {
        ofItem.setString(1, item);
        List<LogEntry> found = all(ofItem);
        if (found.isEmpty()) {
            ofItem.setString(1, Given.composed(item));
            found = all(ofItem);
        }
        return found;
    }

    boolean corrected(long sequence) throws SQLException {
        correcting.setLong(1, sequence);
        try (ResultSet rows = correcting.executeQuery()) {
            return rows.next();
        }
    }

    Optional<Latest> latest(String item, String serves, LocalDate upTo) throws SQLException {
        Optional<Latest> passed = latest(item, serves, Result.PASSED, upTo);
        Optional<Latest> done = latest(item, serves, Result.DONE, upTo);
        if (passed.isPresent() && done.isPresent()) {
            return passed.get().on().isBefore(done.get().on()) ? done : passed;
        }
        return passed.or(() -> done);
    }

    Optional<Latest> failed(String item, String serves, LocalDate upTo) throws SQLException {
        return latest(item, serves, Result.FAILED, upTo);
    }

    Optional<Latest> unjudged(String item, String serves, LocalDate upTo) throws SQLException {
        return latest(item, serves, Result.OPEN, upTo);
    }

    private Optional<Latest> latest(String item, String serves, Result result, LocalDate upTo) throws SQLException {
        lastDone.setString(1, item);
        lastDone.setString(2, serves);
        lastDone.setString(3, result.key());
        lastDone.setLong(4, upTo.toEpochDay());
        try (ResultSet rows = lastDone.executeQuery()) {
            return rows.next()
                    ? Optional.of(new Latest(LocalDate.ofEpochDay(rows.getLong(1)), rows.getLong(2)))
                    : Optional.empty();
        }
    }

    UnitState state(String item) throws SQLException {
        closing.setString(1, item);
        long firstDay;
        try (ResultSet rows = closing.executeQuery()) {
            firstDay = rows.next() ? rows.getLong(1) : 0;
            if (rows.wasNull()) {
                return UnitState.open();
            }
        }
        after.setString(1, item);
        after.setLong(2, firstDay);
        return Reopening.of(all(after));
    }

    private static Item registeredItem(LogEntry entry) {
        if (entry.details() instanceof Details.Registration registration) {
            return registration.item();
        }
        throw new StoreException(
                StoreException.Cause.DAMAGED,
                "entry " + entry.sequence() + " is indexed as a registration but is none.",
                "run \"store verify\".");
    }

    private static Optional<LogEntry> first(PreparedStatement statement) throws SQLException {
        try (ResultSet rows = statement.executeQuery()) {
            return rows.next() ? Optional.of(entry(rows)) : Optional.empty();
        }
    }

    /** The entry of a row that begins with its words and its number. */
    static LogEntry entry(ResultSet row) throws SQLException {
        try {
            return Canon.entry(String.valueOf(row.getString(1)));
        } catch (StoreException e) {
            throw new StoreException(
                    StoreException.Cause.DAMAGED,
                    "entry " + row.getLong(2) + " cannot be read: it was changed after it was written, or a newer"
                            + " program wrote it. Nothing is answered from this store.",
                    "run \"store verify\" to see what is damaged, and \"store salvage\" to save what is intact.");
        }
    }

    private static List<LogEntry> all(PreparedStatement statement) throws SQLException {
        List<LogEntry> entries = new ArrayList<>();
        try (ResultSet rows = statement.executeQuery()) {
            while (rows.next()) {
                entries.add(entry(rows));
            }
        }
        return entries;
    }

    void close() {
        for (PreparedStatement statement : List.of(
                head, origin, lately, one, registered, allRegistered, ofItem, lastDone, closing, after, correcting)) {
            try {
                statement.close();
            } catch (SQLException e) {
                // Closing the connection frees it too.
            }
        }
    }
}
