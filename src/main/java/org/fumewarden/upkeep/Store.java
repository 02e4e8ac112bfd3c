package org.fumewarden.upkeep;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;

/**
 * The register and the log, in one file.
 *
 * <p>Entries are appended, never edited or deleted. An append that returns is on the disk. Not for use by several threads at
 * once; several processes may hold the same file.
 */
public final class Store implements AutoCloseable {
    private final Path file;
    final Connection connection;
    private final StoreQueries queries;
    private final Path at;
    private Optional<Verification> soundness = Optional.empty();

    /** A store; {@code at} is the file itself, or the copy of it that is read. */
    Store(Path file, Path at, Connection connection) throws SQLException {
        this.file = file;
        this.at = at;
        this.connection = connection;
        this.queries = new StoreQueries(file, connection);
    }

    /** Opens a store for reading and writing, and creates the file when there is none. */
    public static Store open(Path file) {
        return StoreOpening.forWriting(file);
    }

    /** Opens a store for reading only. */
    public static Store read(Path file) {
        return StoreOpening.forReading(file);
    }

    /** Appends one entry; it is on the disk when this returns. */
    public LogEntry append(Draft draft, Instant recorded) {
        return appendAll(List.of(draft), recorded).get(0);
    }

    /** Appends all entries or none; they are on the disk when this returns. */
    public List<LogEntry> appendAll(List<Draft> drafts, Instant recorded) {
        return inTransaction(() -> {
            List<LogEntry> written = new ArrayList<>();
            for (Draft draft : drafts) {
                new Admission(queries).check(draft, recorded);
                Head head = queries.head();
                LogEntry entry = new LogEntry(
                        head.entries() + 1, draft.item(), draft.on(), recorded, draft.by(), draft.details());
                insert(entry, head);
                written.add(entry);
            }
            return List.copyOf(written);
        });
    }

    /** Puts entries with their numbers and times into an empty store, checking each against the chain. */
    void restore(Consumer<Consumer<LogEntry>> entries) {
        inTransaction(() -> {
            if (queries.head().entries() > 0) {
                throw StoreException.refused(file + " is not empty.", "import into a new file.");
            }
            entries.accept(this::insert);
            return queries.head();
        });
    }

    /** Appends entries that another store confirmed, with numbers that follow on here: all or none. */
    void append(Supplier<List<LogEntry>> entries) {
        inTransaction(() -> {
            entries.get().forEach(this::insert);
            return queries.head();
        });
    }

    private void insert(LogEntry entry) {
        try {
            insert(entry, queries.head());
        } catch (SQLException e) {
            throw Sqlite.words(file, e);
        }
    }

    private void insert(LogEntry entry, Head head) throws SQLException {
        if (entry.sequence() != head.entries() + 1) {
            throw StoreException.refused(
                    "entry " + entry.sequence() + " does not follow on entry " + head.entries() + ".",
                    "import a whole export, in its order.");
        }
        String body = Canon.write(entry);
        try (PreparedStatement insert = connection.prepareStatement(
                "INSERT INTO entry (sequence, previous, body, hash, item, serves, result, on_day, corrects) VALUES (?,?,?,?,?,?,?,?,?)")) {
            insert.setLong(1, entry.sequence());
            insert.setBytes(2, head.bytes());
            insert.setString(3, body);
            insert.setBytes(4, Canon.hash(head.bytes(), body));
            insert.setString(5, entry.item());
            insert.setString(6, entry.details().serves());
            insert.setString(7, entry.details().result().key());
            insert.setLong(8, entry.on().toEpochDay());
            Optional<Long> corrects = entry.details().corrects();
            insert.setObject(9, corrects.orElse(null));
            insert.executeUpdate();
        }
    }

    private interface Work<T> {
        T run() throws SQLException;
    }

    private <T> T inTransaction(Work<T> work) {
        return framed("BEGIN IMMEDIATE", work);
    }

    private <T> T framed(String begin, Work<T> work) {
        try {
            Sqlite.run(connection, begin);
            T result = work.run();
            Sqlite.run(connection, "COMMIT");
            return result;
        } catch (SQLException e) {
            rollBack();
            throw Sqlite.words(file, e);
        } catch (RuntimeException e) {
            rollBack();
            throw e;
        }
    }

    private void rollBack() {
        try {
            Sqlite.run(connection, "ROLLBACK");
        } catch (SQLException e) {
            // A full disk rolls back by itself; the fault that led here is the one to report.
        }
    }

    /** Answers several questions from one state of the store, whatever others write meanwhile. */
    public <T> T snapshot(Supplier<T> questions) {
        return framed("BEGIN", questions::get);
    }

    public Path file() {
        return file;
    }

    public Head head() {
        return queries.ask(queries::head);
    }

    /** The item as it stands now. */
    public Optional<Item> item(String id) {
        return queries.ask(() -> queries.item(id));
    }

    /** Every item as it stands now, in the order of ids. */
    public List<Item> items() {
        return queries.ask(queries::items);
    }

    /** Every item of one kind as it stands now, in the order of ids. */
    public <T extends Item> List<T> items(Class<T> kind) {
        return items().stream().filter(kind::isInstance).map(kind::cast).toList();
    }

    /** The entry with a number. */
    public Optional<LogEntry> entry(long sequence) {
        return queries.ask(() -> queries.entry(sequence));
    }

    /** Every entry about an item, in the order written. */
    public List<LogEntry> entriesOf(String item) {
        return queries.ask(() -> queries.entriesOf(item));
    }

    /** Hands over every entry in the order written. */
    public void forEach(Consumer<LogEntry> reader) {
        queries.ask(() -> {
            try (PreparedStatement all =
                            connection.prepareStatement("SELECT body, sequence FROM entry ORDER BY sequence");
                    ResultSet rows = all.executeQuery()) {
                while (rows.next()) {
                    reader.accept(StoreQueries.entry(rows));
                }
            }
            return Optional.empty();
        });
    }

    /** The last entry that holds, passed or done, and serves the named purpose. */
    public Optional<Latest> latest(String item, String serves) {
        return latest(item, serves, LocalDate.MAX);
    }

    /** The last entry up to a day that holds, passed or done, and serves the named purpose. */
    Optional<Latest> latest(String item, String serves, LocalDate upTo) {
        return queries.ask(() -> queries.latest(item, serves, upTo));
    }

    /** The last failed attempt at a deed up to a day. */
    Optional<Latest> failed(String item, String serves, LocalDate upTo) {
        return queries.ask(() -> queries.failed(item, serves, upTo));
    }

    /** The last deed up to a day that was not judged for want of figures. */
    Optional<Latest> unjudged(String item, String serves, LocalDate upTo) {
        return queries.ask(() -> queries.unjudged(item, serves, upTo));
    }

    /** What tells this store from every other: the hash of its first entry; empty while there is none. */
    public String origin() {
        return queries.ask(queries::origin);
    }

    /** The last entries, the earliest of them first. */
    List<LogEntry> lately() {
        return queries.ask(queries::lately);
    }

    /** Whether an item is open for use; one of which a damaged entry tells is not shown to be. */
    public UnitState state(String item) {
        return changed(item).map(UnitState::unproven).orElseGet(() -> queries.ask(() -> queries.state(item)));
    }

    /** The chain and the file, checked once for everything that is answered from here. */
    public Verification soundness() {
        if (soundness.isEmpty()) {
            soundness = Optional.of(queries.ask(() -> StoreCheck.of(at, connection)));
        }
        return soundness.get();
    }

    /** What is damaged of an item, or may be; damage of a site is of all that stands on it. */
    Optional<Verification.Damage> changed(String item) {
        Verification found = soundness();
        if (found.intact()) {
            return Optional.empty();
        }
        return found.against(item).or(() -> found.touched().entrySet().stream()
                .filter(e ->
                        item(e.getKey()).filter(Item.Site.class::isInstance).isPresent())
                .map(Map.Entry::getValue)
                .findFirst());
    }

    /** Numbers of the entries of an item that a later entry took the place of. */
    public List<Long> superseded(String item) {
        return entriesOf(item).stream()
                .map(e -> e.details().corrects().orElse(null))
                .filter(Objects::nonNull)
                .toList();
    }

    @Override
    public void close() {
        queries.close();
        StoreOpening.quietly(connection);
    }
}
