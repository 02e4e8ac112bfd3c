package org.fumewarden.batch;

import java.io.BufferedInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.fumewarden.codes.InputException;
import org.fumewarden.codes.Problem;
import org.fumewarden.codes.YamlFiles;

/** The tasks of a batch, one after the other. For one thread. */
public abstract sealed class Entries implements AutoCloseable {
    private static final int CHUNK = 1 << 16;

    private Optional<Entry> peeked = Optional.empty();

    private Entries() {}

    /**
     * Opens a file with one task a line as JSON, or a folder of task files.
     *
     * @throws InputException when there is no such file or folder
     */
    public static Entries open(Path input) throws IOException {
        if (Files.isDirectory(input)) {
            return new Folder(input);
        }
        if (!Files.exists(input)) {
            throw new InputException(
                    new Problem(input.toString(), 0, "", "does not exist.", "check the spelling of the path."));
        }
        return new Lines(Files.newInputStream(input));
    }

    /** Reads one task. */
    interface Source {
        Optional<Entry> read() throws IOException;
    }

    /** Tasks from elsewhere. */
    static Entries of(Source source) {
        return new Others(source);
    }

    /** The next task, or nothing at the end. Blank lines are counted and left out. */
    public final Optional<Entry> next() throws IOException {
        Optional<Entry> next = peek();
        peeked = Optional.empty();
        return next;
    }

    /** The task that {@link #next} will give, left where it is. */
    final Optional<Entry> peek() throws IOException {
        if (peeked.isEmpty()) {
            peeked = read();
        }
        return peeked;
    }

    abstract Optional<Entry> read() throws IOException;

    @Override
    public abstract void close() throws IOException;

    private static final class Others extends Entries {
        private final Source source;

        Others(Source source) {
            this.source = source;
        }

        @Override
        Optional<Entry> read() throws IOException {
            return source.read();
        }

        @Override
        public void close() {
            // What it reads from is closed by its owner.
        }
    }

    static final class Lines extends Entries {
        private final InputStream in;
        private long number;

        Lines(InputStream in) {
            this.in = new BufferedInputStream(in, CHUNK);
        }

        @Override
        Optional<Entry> read() throws IOException {
            while (true) {
                Entry.Line line = line();
                if (line == null) {
                    return Optional.empty();
                }
                if (!line.isBlank()) {
                    return Optional.of(line);
                }
            }
        }

        /** Reads to the line end but keeps no more than a task may have, so that no line can fill the memory. */
        private Entry.Line line() throws IOException {
            int b = in.read();
            if (b < 0) {
                return null;
            }
            number++;
            ByteArrayOutputStream kept = new ByteArrayOutputStream(2048);
            boolean tooLong = false;
            for (; b >= 0 && b != '\n'; b = in.read()) {
                if (kept.size() < YamlFiles.MAX_BYTES) {
                    kept.write(b);
                } else {
                    tooLong = true;
                }
            }
            return new Entry.Line(number, kept.toByteArray(), tooLong);
        }

        @Override
        public void close() throws IOException {
            in.close();
        }
    }

    private static final class Folder extends Entries {
        private final Iterator<Path> paths;
        private long number;

        Folder(Path folder) throws IOException {
            try (Stream<Path> files = Files.list(folder)) {
                List<Path> sorted = files.filter(Folder::isTask)
                        .sorted((a, b) -> a.getFileName()
                                .toString()
                                .compareTo(b.getFileName().toString()))
                        .toList();
                paths = sorted.iterator();
            }
        }

        private static boolean isTask(Path path) {
            String name = path.getFileName().toString();
            return Files.isRegularFile(path)
                    && (name.endsWith(".yaml") || name.endsWith(".yml") || name.endsWith(".json"));
        }

        @Override
        Optional<Entry> read() {
            return paths.hasNext() ? Optional.of(new Entry.TaskFile(++number, paths.next())) : Optional.empty();
        }

        @Override
        public void close() {
            // Nothing is held open between two files.
        }
    }
}
