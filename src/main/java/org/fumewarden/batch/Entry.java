package org.fumewarden.batch;

import java.nio.file.Path;
import java.util.Optional;
import org.fumewarden.task.TaskTree;

/** One task of a batch, not yet read. */
public sealed interface Entry {
    /** Its place in the input: the line of a file of lines, or the place in the sorted list of a folder, from 1. */
    long number();

    /** The name of its file, when it has one of its own. */
    Optional<String> file();

    /** What tells whether the task is the same as in an earlier run. */
    String digest();

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

        @Override
        public String digest() {
            return Digest.of(bytes);
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

        @Override
        public String digest() {
            return Digest.of(TaskTree.sources(path));
        }
    }

    /** A task that an earlier run settled. */
    record Settled(Outcome outcome) implements Entry {
        @Override
        public long number() {
            return outcome.number();
        }

        @Override
        public Optional<String> file() {
            return Optional.empty();
        }

        @Override
        public String digest() {
            return "";
        }
    }
}
