package org.fumewarden.batch;

import java.nio.file.Path;
import java.util.Optional;

/** One task of a batch, not yet read. */
public sealed interface Entry {
    /** Its place in the input: the line of a file of lines, or the place in the sorted list of a folder, from 1. */
    long number();

    /** The name of its file, when it has one of its own. */
    Optional<String> file();

    /**
     * A line of a file of lines.
     *
     * @param bytes without the line end
     * @param tooLong whether the line went on beyond what is read; bytes then hold its beginning
     */
    record Line(long number, byte[] bytes, boolean tooLong) implements Entry {
        @Override
        public Optional<String> file() {
            return Optional.empty();
        }

        boolean isBlank() {
            for (byte b : bytes) {
                if (b != ' ' && b != '\t' && b != '\r') {
                    return false;
                }
            }
            return !tooLong;
        }
    }

    /** A file of a folder; it may extend another file. */
    record TaskFile(long number, Path path) implements Entry {
        @Override
        public Optional<String> file() {
            return Optional.of(path.getFileName().toString());
        }
    }
}
