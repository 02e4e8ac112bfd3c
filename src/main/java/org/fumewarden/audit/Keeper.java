package org.fumewarden.audit;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.fumewarden.codes.InputException;

/** Keeps advice in a folder, each entry chained to the one before by its hash. */
public final class Keeper {
    private static final String ENDING = ".kept.json";

    private final Path folder;

    public Keeper(Path folder) {
        this.folder = folder;
    }

    /**
     * Keeps a piece of advice. It is on disk when this returns.
     *
     * @param task the task file as plain maps, lists and words
     * @param advice the advice as JSON text
     * @param at the time of keeping
     * @return the new file
     */
    public Path keep(Object task, String advice, Instant at) {
        try {
            Files.createDirectories(folder);
            try (FileChannel lock = FileChannel.open(
                            folder.resolve(".lock"), StandardOpenOption.CREATE, StandardOpenOption.WRITE);
                    var held = lock.lock()) {
                if (!held.isValid()) {
                    throw new IOException("the folder is locked by another program");
                }
                return write(task, advice, at);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private Path write(Object task, String advice, Instant at) throws IOException {
        List<Path> files = files();
        KeptAdvice last = files.isEmpty() ? null : KeptAdvice.read(files.get(files.size() - 1));
        long sequence = last == null ? 1 : last.sequence() + 1;
        ObjectNode content = KeptAdvice.empty();
        content.put("format", KeptAdvice.FORMAT);
        content.put("sequence", sequence);
        content.put("previous", last == null ? KeptAdvice.GENESIS : last.hash());
        content.put("kept-at", at.toString());
        content.set("task", KeptAdvice.tree(task));
        content.set("advice", KeptAdvice.parse(advice));
        Path target = folder.resolve(String.format(Locale.ROOT, "%08d%s", sequence, ENDING));
        Path draft = folder.resolve(target.getFileName() + ".draft");
        try (FileChannel out = FileChannel.open(
                draft, StandardOpenOption.CREATE, StandardOpenOption.TRUNCATE_EXISTING, StandardOpenOption.WRITE)) {
            ByteBuffer bytes = ByteBuffer.wrap(KeptAdvice.seal(content).getBytes(StandardCharsets.UTF_8));
            while (bytes.hasRemaining()) {
                out.write(bytes);
            }
            out.force(true);
        }
        return Files.move(draft, target, StandardCopyOption.ATOMIC_MOVE);
    }

    /** The kept files in order. */
    public List<Path> files() {
        try (Stream<Path> found = Files.list(folder)) {
            return found.filter(p -> p.toString().endsWith(ENDING)).sorted().toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The hash of the last entry, or that of an empty chain. */
    public String lastHash() {
        List<Path> files = files();
        return files.isEmpty()
                ? KeptAdvice.GENESIS
                : KeptAdvice.read(files.get(files.size() - 1)).hash();
    }

    /** The first thing wrong with the chain, in words; empty when every link holds. */
    public Optional<String> firstBrokenLink() {
        String previous = KeptAdvice.GENESIS;
        long expected = 1;
        for (Path file : files()) {
            KeptAdvice kept;
            try {
                kept = KeptAdvice.read(file);
            } catch (InputException e) {
                return Optional.of(file.getFileName() + ": it cannot be read as kept advice");
            }
            if (!kept.intact()) {
                return Optional.of(file.getFileName() + ": its bytes do not match its hash");
            }
            if (kept.sequence() != expected) {
                return Optional.of(
                        file.getFileName() + ": number " + expected + " is missing before number " + kept.sequence());
            }
            if (!kept.previous().equals(previous)) {
                return Optional.of(file.getFileName() + ": it does not follow the entry before it");
            }
            previous = kept.hash();
            expected++;
        }
        return Optional.empty();
    }
}
