package org.fumewarden.upkeep;

import java.io.IOException;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.Arrays;
import java.util.Optional;
import java.util.TreeMap;

/**
 * Saves what is intact in a broken store.
 *
 * <p>Each entry carries the hash before it, its words and its hash, so it proves itself alone. Entries are asked for by number;
 * those that the database no longer finds are searched for in the raw bytes of the file.
 */
public final class Salvage {
    /**
     * What was saved.
     *
     * @param saved number of entries written
     * @param lost the first few gaps in words; empty when there is no gap among what was saved
     * @param whole whether the file is intact; otherwise nobody can tell what stood after the highest number
     */
    public record Report(long saved, long highest, String lost, boolean whole) {}

    /** Shorter than any entry with its two hashes, so that no number beyond the file's size is tried in vain. */
    private static final int SMALLEST_ENTRY = 128;

    private static final int GAPS_SHOWN = 8;

    private Salvage() {}

    /** Writes every entry that proves itself, in the order of their numbers. */
    public static Report export(Path file, Writer out) throws IOException {
        TreeMap<Long, String> found = new TreeMap<>();
        boolean whole = StoreCheck.verify(file).intact();
        long bound = Files.size(file) / SMALLEST_ENTRY;
        byNumber(file, bound, found);
        if (!whole || found.isEmpty() || found.lastKey() != found.size()) {
            Carving.search(file, found);
        }
        out.write("{\"fumewarden-salvage\":1,\"entries\":" + found.size() + "}\n");
        for (String line : found.values()) {
            out.write(line);
        }
        return new Report(found.size(), found.isEmpty() ? 0 : found.lastKey(), gaps(found), whole && !found.isEmpty());
    }

    private static void byNumber(Path file, long bound, TreeMap<Long, String> found) {
        try (Connection connection = Sqlite.open(file, true);
                PreparedStatement one =
                        connection.prepareStatement("SELECT previous, body, hash FROM entry WHERE sequence = ?")) {
            for (long number = 1; number <= bound; number++) {
                long wanted = number;
                read(one, wanted).ifPresent(line -> found.put(wanted, line));
            }
        } catch (SQLException e) {
            // The database cannot even be opened: the raw bytes are what is left.
        }
    }

    private static Optional<String> read(PreparedStatement one, long number) {
        try {
            one.setLong(1, number);
            try (ResultSet row = one.executeQuery()) {
                return row.next()
                        ? proven(number, row.getBytes(1), row.getString(2), row.getBytes(3))
                        : Optional.empty();
            }
        } catch (SQLException e) {
            // This entry is lost to the database; the next may not be.
            return Optional.empty();
        }
    }

    private static Optional<String> proven(long number, byte[] previous, String body, byte[] hash) {
        if (previous == null || body == null || hash == null || !Arrays.equals(hash, Canon.hash(previous, body))) {
            return Optional.empty();
        }
        try {
            return Canon.entry(body).sequence() == number ? Optional.of(JsonLines.line(body, hash)) : Optional.empty();
        } catch (StoreException e) {
            return Optional.empty();
        }
    }

    private static String gaps(TreeMap<Long, String> found) {
        StringBuilder gaps = new StringBuilder();
        int shown = 0;
        long expected = 1;
        for (long number : found.keySet()) {
            if (number > expected && shown++ < GAPS_SHOWN) {
                gaps.append(gaps.isEmpty() ? "" : ", ")
                        .append(number - 1 == expected ? "" + expected : expected + " to " + (number - 1));
            }
            expected = number + 1;
        }
        return gaps + (shown > GAPS_SHOWN ? ", ..." : "");
    }
}
