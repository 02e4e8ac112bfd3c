package org.fumewarden.codes;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * A file that a command was asked to write: whole or not at all, and in the place of nothing that anybody may want.
 *
 * <p>It is written beside its place and moved there when it is whole. What is there already stays, unless the user means to
 * replace it; what the same command reads, and a register, stay even then.
 */
public final class OutputFile {
    private static final byte[] DATABASE = "SQLite format 3".getBytes(StandardCharsets.US_ASCII);

    private final String option;
    private final Path target;
    private final boolean replace;
    private final List<Path> spared = new ArrayList<>();
    private String instead = "name a new file, or add --force to replace it.";

    /**
     * A file to write.
     *
     * @param option what the user named it by, such as --output
     * @param replace whether the user means to replace what is there
     */
    public OutputFile(String option, Path target, boolean replace) {
        this.option = option;
        this.target = target;
        this.replace = replace;
    }

    /** Never replaces these files, which the command reads; null is left out. */
    public OutputFile sparing(Path... files) {
        Arrays.stream(files).filter(f -> f != null).forEach(spared::add);
        return this;
    }

    /** What would do when the place is taken. */
    public OutputFile orElse(String maybe) {
        instead = maybe;
        return this;
    }

    /** Puts the content of a file into a stream. */
    public interface Content {
        void to(OutputStream out) throws IOException;
    }

    /**
     * Refuses a place that may not be written, before any work is done for it.
     *
     * @throws InputException when the place is taken or is no place for a file
     */
    public OutputFile admit() {
        if (Files.isDirectory(target)) {
            throw refused("is a folder.", "name a file inside it.");
        }
        for (Path file : spared) {
            if (same(file, target)) {
                throw refused("is what this command reads: " + file + ".", "name another file.");
            }
        }
        if (Files.isRegularFile(target)) {
            if (!replace) {
                throw refused("is there already and is not overwritten.", instead);
            }
            if (isDatabase()) {
                throw refused("is a register, and no register is ever overwritten.", "name another file.");
            }
        }
        return this;
    }

    private static boolean same(Path one, Path other) {
        try {
            return Files.exists(one) && Files.exists(other)
                    ? Files.isSameFile(one, other)
                    : one.toAbsolutePath()
                            .normalize()
                            .equals(other.toAbsolutePath().normalize());
        } catch (IOException e) {
            return false;
        }
    }

    private boolean isDatabase() {
        try (InputStream in = Files.newInputStream(target)) {
            return Arrays.equals(in.readNBytes(DATABASE.length), DATABASE);
        } catch (IOException e) {
            return false;
        }
    }

    /** Writes the file, and is done when its bytes are on the disk. */
    public void write(byte[] content) {
        write(out -> out.write(content));
    }

    /** Writes the file, and is done when its bytes are on the disk. */
    public void write(Content content) {
        admit();
        try {
            // A device or a pipe is no place to move a file to.
            if (Files.exists(target) && !Files.isRegularFile(target)) {
                try (OutputStream out = Files.newOutputStream(target)) {
                    content.to(out);
                }
                return;
            }
            moved(content);
        } catch (FileAlreadyExistsException e) {
            throw refused("came into being meanwhile and is not overwritten.", "name a new file.");
        } catch (NoSuchFileException e) {
            throw refused("lies in a folder that does not exist.", "make the folder first.");
        } catch (IOException e) {
            throw refused(
                    "cannot be written (" + e.getMessage() + ").",
                    "name a file in a folder that is there, has room and may be written to.");
        }
    }

    /** Puts a whole file that lies beside into the place. */
    public void take(Path whole) throws IOException {
        admit();
        try (FileChannel file = FileChannel.open(whole, StandardOpenOption.WRITE)) {
            file.force(true);
        }
        Files.move(whole, target);
    }

    private void moved(Content content) throws IOException {
        Path place = Files.isSymbolicLink(target) && Files.exists(target) ? target.toRealPath() : target;
        Path beside = beside(place);
        try {
            try (FileChannel file = FileChannel.open(beside, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE)) {
                OutputStream out = new BufferedOutputStream(Channels.newOutputStream(file));
                content.to(out);
                out.flush();
                file.force(true);
            }
            if (replace) {
                Files.move(beside, place, StandardCopyOption.REPLACE_EXISTING, StandardCopyOption.ATOMIC_MOVE);
            } else {
                Files.move(beside, place);
            }
        } finally {
            Files.deleteIfExists(beside);
        }
    }

    /** A name beside a file, for its content while that is not whole. */
    public static Path beside(Path place) {
        return place.resolveSibling(
                "." + place.getFileName() + "." + ProcessHandle.current().pid() + ".part");
    }

    private InputException refused(String message, String maybe) {
        return new InputException(new Problem(target.toString(), 0, option, message, maybe));
    }
}
