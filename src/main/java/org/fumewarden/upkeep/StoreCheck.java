package org.fumewarden.upkeep;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.fumewarden.model.Count;

/** Checks every entry against the chain, and the file against itself. */
public final class StoreCheck {
    private static final int LISTED = 20;

    /** Of the format of SQLite: a head of 100 bytes, with the number of pages in the four bytes from byte 28. */
    private static final int HEAD_BYTES = 100;

    private static final byte[] BEGINNING = "SQLite format 3\0".getBytes(StandardCharsets.US_ASCII);

    private static final int PAGES_AT = 28;

    private static final String DISORDER =
            "is damaged inside: its parts do not fit together, so that what it holds may not be found.";

    private final List<Verification.Damage> damages = new ArrayList<>();
    private final List<String> doubts = new ArrayList<>();
    private final Map<String, Verification.Damage> touched = new TreeMap<>();
    private Optional<Verification.Damage> everywhere = Optional.empty();
    private Set<String> about = Set.of();
    private Optional<LogEntry> earlier = Optional.empty();
    private byte[] running = Canon.origin();
    private long read;
    private Head intact = Head.of(0, Canon.origin());
    private Optional<Head> expected = Optional.empty();

    private StoreCheck() {}

    /** Checks a store. */
    public static Verification verify(Path file) {
        return verify(file, Optional.empty());
    }

    /**
     * Checks a store, and that it still holds what it held when a head was noted down.
     *
     * @param expected a head noted earlier and kept elsewhere
     */
    public static Verification verify(Path file, Optional<Head> expected) {
        StoreCheck check = new StoreCheck();
        check.expected = expected;
        try (Store probe = Store.read(file)) {
            probe.head();
        } catch (StoreException e) {
            if (e.reason() == StoreException.Cause.MISSING || e.reason() == StoreException.Cause.BUSY) {
                throw e;
            }
            if (e.reason() != StoreException.Cause.DAMAGED) {
                check.found(0, "is not a store: " + e.getMessage());
            }
        }
        if (check.size(file)) {
            try (Connection connection = Sqlite.open(file, true)) {
                check.walk(connection);
                check.structure(connection);
            } catch (SQLException e) {
                check.unreadable(check.read + 1);
            }
        }
        expected.filter(h -> h.entries() > check.read)
                .ifPresent(h -> check.found(
                        check.read + 1,
                        "is missing: " + Count.of(h.entries(), "entry") + " stood there when the seal was noted."));
        return check.verification();
    }

    /** Checks a store that is open, for those who answer from it. */
    static Verification of(Path file, Connection connection) throws SQLException {
        StoreCheck check = new StoreCheck();
        check.size(file);
        check.walk(connection);
        check.structure(connection);
        return check.verification();
    }

    private Verification verification() {
        return new Verification(intact, read, damages, doubts, touched, everywhere);
    }

    private void walk(Connection connection) {
        long reached = 0;
        try (PreparedStatement all = connection.prepareStatement(
                        "SELECT sequence, previous, body, hash, item, serves, result, on_day, corrects FROM entry ORDER BY sequence");
                ResultSet rows = all.executeQuery()) {
            while (rows.next()) {
                reached = rows.getLong(1);
                one(rows, reached);
            }
        } catch (SQLException e) {
            unreadable(reached + 1);
        }
    }

    private void unreadable(long entry) {
        found(entry, "cannot be read: the file is damaged where it stood.");
    }

    private void one(ResultSet row, long sequence) throws SQLException {
        if (sequence != read + 1) {
            found(read + 1, "is missing; entry " + sequence + " follows instead.");
        }
        read = sequence;
        byte[] previous = row.getBytes(2);
        String body = row.getString(3);
        byte[] hash = row.getBytes(4);
        Optional<String> fault = fault(row, sequence, previous, body, hash);
        byte[] before = running;
        String item = row.getString(5);
        Set<String> items = fault.isEmpty() ? Set.of(item) : items(item, body);
        if (fault.isPresent()) {
            found(sequence, fault.get(), Arrays.equals(previous, before) ? items : both(items, about));
        } else if (damages.stream().noneMatch(d -> d.entry() > 0)) {
            intact = Head.of(sequence, hash);
        }
        about = items;
        running = hash == null ? running : hash;
        expected.filter(h -> h.entries() == sequence && !Arrays.equals(h.bytes(), hash))
                .ifPresent(h -> found(sequence, "is not the one it was when the seal was noted."));
    }

    private Optional<String> fault(ResultSet row, long sequence, byte[] previous, String body, byte[] hash)
            throws SQLException {
        if (previous == null || body == null || hash == null) {
            return Optional.of("lacks a part of itself.");
        }
        if (!Arrays.equals(hash, Canon.hash(previous, body))) {
            return Optional.of("was changed after it was written: its hash does not fit its words.");
        }
        if (!Arrays.equals(previous, running)) {
            return Optional.of("does not follow on entry " + (sequence - 1) + ": one of the two was put there later.");
        }
        try {
            LogEntry entry = Canon.entry(body);
            doubts(entry);
            boolean same = entry.sequence() == sequence
                    && entry.item().equals(row.getString(5))
                    && entry.details().serves().equals(row.getString(6))
                    && entry.details().result().key().equals(row.getString(7))
                    && entry.on().toEpochDay() == row.getLong(8)
                    && entry.details().corrects().orElse(0L) == row.getLong(9);
            return same ? Optional.empty() : Optional.of("is indexed under other values than it holds.");
        } catch (StoreException e) {
            return Optional.of("holds what this program cannot read: " + e.getMessage());
        }
    }

    /** Of what an entry tells, by the words it is found by and by its own. */
    private static Set<String> items(String indexed, String body) {
        Optional<String> own = Optional.ofNullable(body).flatMap(StoreCheck::item);
        return Stream.concat(Optional.ofNullable(indexed).stream(), own.stream())
                .collect(Collectors.toSet());
    }

    private static Optional<String> item(String body) {
        try {
            return Optional.of(Canon.entry(body).item());
        } catch (StoreException e) {
            return Optional.empty();
        }
    }

    private static Set<String> both(Set<String> one, Set<String> other) {
        return Stream.concat(one.stream(), other.stream()).collect(Collectors.toSet());
    }

    private void doubts(LogEntry entry) {
        earlier.flatMap(b -> Clocks.backwards(b, entry)).ifPresent(this::doubt);
        if (Plausible.ahead(entry)) {
            doubt("entry " + entry.sequence() + " is dated " + entry.on() + " and was written down at "
                    + entry.recorded() + ", before that day had come.");
        }
        earlier = Optional.of(entry);
    }

    private void doubt(String what) {
        if (doubts.size() < LISTED) {
            doubts.add(what);
        }
    }

    /** The head of the file says how many pages it has; a file that was cut has fewer. False when it is no such file at all. */
    private boolean size(Path file) {
        try (InputStream in = Files.newInputStream(file)) {
            byte[] head = in.readNBytes(HEAD_BYTES);
            if (head.length == HEAD_BYTES) {
                ByteBuffer fields = ByteBuffer.wrap(head);
                long pages = fields.getInt(PAGES_AT) & 0xffff_ffffL;
                long bytes = pages * Sqlite.PAGE_BYTES;
                long there = Files.size(file);
                if (!Arrays.equals(BEGINNING, Arrays.copyOf(head, BEGINNING.length))) {
                    found(0, "is not a store: its first bytes are not those of one.");
                    return false;
                }
                if (there < bytes) {
                    found(0, "was cut, or its first bytes were changed: more belongs to it than is there.");
                }
                return true;
            }
            found(0, head.length == 0 ? "is empty." : "was cut: not even its first bytes are there.");
        } catch (IOException e) {
            found(0, "cannot be read (" + e.getMessage() + ").");
        }
        return false;
    }

    private void structure(Connection connection) throws SQLException {
        try (Statement statement = connection.createStatement();
                ResultSet rows = statement.executeQuery("PRAGMA integrity_check(5)")) {
            if (rows.next() && !"ok".equals(rows.getString(1))) {
                found(0, DISORDER);
            }
        } catch (SQLException e) {
            found(0, DISORDER);
        }
    }

    private void found(long entry, String what) {
        found(entry, what, Set.of());
    }

    /** Notes a fault down; where nobody can tell of which items it is, it is of all. */
    private void found(long entry, String what, Set<String> items) {
        Verification.Damage damage = new Verification.Damage(entry, what);
        items.forEach(i -> touched.putIfAbsent(i, damage));
        if (items.isEmpty() && everywhere.isEmpty()) {
            everywhere = Optional.of(damage);
        }
        if (damages.size() < LISTED && !damages.contains(damage)) {
            damages.add(damage);
        }
    }
}
