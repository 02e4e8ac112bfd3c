package org.fumewarden.batch;

import java.io.BufferedInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.fumewarden.codes.InputException;
import org.fumewarden.codes.Problem;

/** Walks the complete lines of a result file, after the marker it begins with. What has no line end is torn, and no line. */
final class WrittenLines implements AutoCloseable {
    /**
     * One line of results.
     *
     * @param number the place of its task in the input; 0 when the line is not as it was written
     * @param input digest of its task
     * @param end first byte after its line end
     */
    record Line(long number, String input, byte[] bytes, long end) {
        boolean answers(Entry entry) {
            return number == entry.number() && input.equals(entry.digest());
        }
    }

    private static final Pattern HEAD = Pattern.compile("^\\{\"line\":(\\d{1,18}),\"input\":\"([0-9a-f]{32})\"");
    private static final int HEAD_LENGTH = 80;

    /** No line of advice comes near it; another file may be one endless line. */
    private static final int LONGEST = 1 << 26;

    private final InputStream in;
    private long at;
    private Optional<Line> peeked = Optional.empty();

    private WrittenLines(InputStream in) {
        this.in = in;
    }

    /**
     * Opens a result file; an empty one, or one with a torn marker, has no lines.
     *
     * @throws InputException when it does not begin with the marker
     */
    static WrittenLines open(Path path, byte[] marker) throws IOException {
        InputStream in = new BufferedInputStream(Files.newInputStream(path), 1 << 16);
        byte[] head = in.readNBytes(marker.length);
        if (!new String(marker, StandardCharsets.UTF_8).startsWith(new String(head, StandardCharsets.UTF_8))) {
            in.close();
            throw new InputException(new Problem(
                    path.toString(),
                    1,
                    "",
                    "was not begun by this command as this kind of file, and stays as it is.",
                    "name the file that the first run wrote, or begin a new one without --resume."));
        }
        WrittenLines lines = new WrittenLines(in);
        lines.at = head.length == marker.length ? head.length : 0;
        return lines;
    }

    /** First byte after the last line handed out, or after the marker. */
    long at() {
        return at - peeked.map(l -> l.bytes().length + 1L).orElse(0L);
    }

    Optional<Line> peek() throws IOException {
        if (peeked.isEmpty()) {
            peeked = read();
        }
        return peeked;
    }

    Optional<Line> next() throws IOException {
        Optional<Line> next = peek();
        peeked = Optional.empty();
        return next;
    }

    private Optional<Line> read() throws IOException {
        ByteArrayOutputStream kept = new ByteArrayOutputStream(1 << 12);
        int b = in.read();
        for (; b >= 0 && b != '\n'; b = in.read()) {
            if (kept.size() == LONGEST) {
                throw new IOException("a line of results has more than " + LONGEST + " bytes");
            }
            kept.write(b);
        }
        if (b < 0) {
            return Optional.empty();
        }
        byte[] bytes = kept.toByteArray();
        at += bytes.length + 1L;
        Matcher head =
                HEAD.matcher(new String(bytes, 0, Math.min(bytes.length, HEAD_LENGTH), StandardCharsets.ISO_8859_1));
        return head.find() && Digest.intact(bytes)
                ? Optional.of(new Line(Long.parseLong(head.group(1)), head.group(2), bytes, at))
                : Optional.of(new Line(0, "", bytes, at));
    }

    @Override
    public void close() throws IOException {
        in.close();
    }
}
