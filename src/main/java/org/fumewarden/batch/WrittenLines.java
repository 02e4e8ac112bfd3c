package org.fumewarden.batch;

import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Walks the complete lines of a result file and ends at the first that is torn or was not written by a batch. */
final class WrittenLines implements AutoCloseable {
    /**
     * One line of results.
     *
     * @param number the place of its task in the input
     * @param start first byte of the line
     * @param end first byte after its line end
     */
    record Span(long number, long start, long end) {}

    private static final Pattern HEAD = Pattern.compile("^\\{\"line\":(\\d{1,18})[,}]");
    private static final int HEAD_LENGTH = 40;

    private final InputStream in;
    private long at;

    WrittenLines(Path path) throws IOException {
        in = new BufferedInputStream(Files.newInputStream(path), 1 << 16);
    }

    Optional<Span> next() throws IOException {
        long start = at;
        StringBuilder head = new StringBuilder();
        int before = -1;
        int b = in.read();
        for (; b >= 0 && b != '\n'; b = in.read()) {
            at++;
            before = b;
            if (head.length() < HEAD_LENGTH) {
                head.append((char) b);
            }
        }
        Matcher matcher = HEAD.matcher(head);
        if (b < 0 || before != '}' || !matcher.find()) {
            return Optional.empty();
        }
        at++;
        return Optional.of(new Span(Long.parseLong(matcher.group(1)), start, at));
    }

    @Override
    public void close() throws IOException {
        in.close();
    }
}
