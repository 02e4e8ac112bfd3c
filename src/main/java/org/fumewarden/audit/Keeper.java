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
import java.security.PrivateKey;
import java.security.PublicKey;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.fumewarden.codes.InputException;
import org.fumewarden.codes.Problem;
import org.fumewarden.codes.RuleFolder;

/** Keeps advice in a folder, each entry chained to the one before by its hash. */
public final class Keeper {
    private static final String ENDING = ".kept.json";

    private final Path folder;

    public Keeper(Path folder) {
        this.folder = folder;
    }

    /**
     * What is kept beside advice.
     *
     * @param program the program and version that advised
     * @param rules the rules that decided
     * @param folders the folders of the rules that decide under the code
     */
    public record Source(String program, RuleFolder rules, List<String> folders) {}

    /**
     * Keeps a piece of advice. It is on disk, signed when a key is given, when this returns.
     *
     * @param task the task file as plain maps, lists and words
     * @param advice the advice as JSON text
     * @param at the time of keeping
     * @return the new file
     * @throws InputException when the chain is damaged, or the clock runs behind it
     */
    public Path keep(Object task, String advice, Instant at, Source source, Optional<PrivateKey> key) {
        ObjectNode content = KeptAdvice.empty();
        content.put("program", source.program());
        content.set("task", KeptAdvice.tree(task));
        content.set("advice", KeptAdvice.parse(advice));
        String revision = content.path("advice").path("revision").asText();
        return locked(() -> {
            Path rules = KeptRules.of(folder, revision);
            if (!Files.isRegularFile(rules)) {
                Files.createDirectories(rules.getParent());
                byte[] archive = KeptRules.archive(source.rules(), source.folders());
                put(rules, archive);
            }
            if (key.isPresent()) {
                // What is signed is what decided just now, not what lay there.
                Signatures.sign(rules, KeptRules.archive(source.rules(), source.folders()), key.get());
            }
            return append(content, at, key);
        });
    }

    /** Keeps what a person said of an entry of this chain. */
    public Path keep(Review review, Instant at, Optional<PrivateKey> key) {
        ObjectNode content = KeptAdvice.empty();
        content.set("review", review.node());
        return locked(() -> append(content, at, key));
    }

    private interface Keeping {
        Path keep() throws IOException;
    }

    private Path locked(Keeping keeping) {
        try {
            Files.createDirectories(folder);
            try (FileChannel lock = FileChannel.open(
                            folder.resolve(".lock"), StandardOpenOption.CREATE, StandardOpenOption.WRITE);
                    var held = lock.lock()) {
                if (!held.isValid()) {
                    throw new IOException("the folder is locked by another program");
                }
                if (!files().isEmpty()) {
                    firstBrokenLink().ifPresent(broken -> {
                        throw refused(
                                "is damaged at " + broken + ". Nothing is added to it.",
                                "find out who changed it, keep it as it is, and begin a new folder.");
                    });
                }
                return keeping.keep();
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private Path append(ObjectNode content, Instant at, Optional<PrivateKey> key) throws IOException {
        List<Path> files = files();
        KeptAdvice last = files.isEmpty() ? null : KeptAdvice.read(files.get(files.size() - 1));
        if (last != null && last.keptAt().orElse(Instant.MIN).isAfter(at)) {
            throw refused(
                    "has a last entry of " + last.keptAt().get() + ", and this clock says " + at
                            + ". Nothing is added.",
                    "set the clock right.");
        }
        long sequence = last == null ? 1 : last.sequence() + 1;
        content.put("format", KeptAdvice.FORMAT);
        content.put("sequence", sequence);
        content.put("previous", last == null ? KeptAdvice.GENESIS : last.hash());
        content.put("kept-at", at.toString());
        Path target = folder.resolve(String.format(Locale.ROOT, "%08d%s", sequence, ENDING));
        byte[] bytes = KeptAdvice.seal(content).getBytes(StandardCharsets.UTF_8);
        if (key.isPresent()) {
            Signatures.sign(target, bytes, key.get());
        }
        return put(target, bytes);
    }

    /** Puts a file in its place whole or not at all. */
    private static Path put(Path target, byte[] content) throws IOException {
        Path draft = target.resolveSibling(target.getFileName() + ".draft");
        try (FileChannel out = FileChannel.open(
                draft, StandardOpenOption.CREATE, StandardOpenOption.TRUNCATE_EXISTING, StandardOpenOption.WRITE)) {
            ByteBuffer bytes = ByteBuffer.wrap(content);
            while (bytes.hasRemaining()) {
                out.write(bytes);
            }
            out.force(true);
        }
        return Files.move(draft, target, StandardCopyOption.ATOMIC_MOVE);
    }

    private InputException refused(String message, String maybe) {
        return new InputException(new Problem(folder.toString(), 0, "", message, maybe));
    }

    /** The entries in order. */
    public List<KeptAdvice> entries() {
        return files().stream().map(KeptAdvice::read).toList();
    }

    /** The kept files in order. */
    public List<Path> files() {
        if (!Files.isDirectory(folder)) {
            return List.of();
        }
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

    /** The first thing wrong with the chain, in words; empty when every entry follows the one before it. */
    public Optional<String> firstBrokenLink() {
        String previous = KeptAdvice.GENESIS;
        Instant before = Instant.MIN;
        long expected = 1;
        for (Path file : files()) {
            KeptAdvice kept;
            try {
                kept = KeptAdvice.read(file);
            } catch (InputException e) {
                return Optional.of(file.getFileName() + ": it cannot be read as kept advice");
            }
            Optional<String> fault = fault(kept, expected, previous, before);
            if (fault.isPresent()) {
                return Optional.of(file.getFileName() + ": " + fault.get());
            }
            previous = kept.hash();
            before = kept.keptAt().orElse(before);
            expected++;
        }
        return expected == 1 ? Optional.of(folder.getFileName() + ": it holds no entries") : Optional.empty();
    }

    private static Optional<String> fault(KeptAdvice kept, long expected, String previous, Instant before) {
        if (!kept.intact()) {
            return Optional.of("its bytes do not match its hash");
        }
        if (kept.sequence() != expected) {
            return Optional.of("number " + expected + " is missing before number " + kept.sequence());
        }
        if (!kept.previous().equals(previous)) {
            return Optional.of("it does not follow the entry before it");
        }
        if (kept.keptAt().isEmpty()) {
            return Optional.of("it does not say when it was kept");
        }
        return kept.keptAt().get().isBefore(before)
                ? Optional.of("it was kept before the entry that it follows")
                : Optional.empty();
    }

    /** The first entry without a signature by this key, in words. */
    public Optional<String> firstUnsigned(PublicKey key) {
        for (Path file : files()) {
            Optional<String> fault = Signatures.fault(file, key);
            if (fault.isPresent()) {
                return Optional.of(file.getFileName() + ": " + fault.get());
            }
        }
        return Optional.empty();
    }
}
