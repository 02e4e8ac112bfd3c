package org.fumewarden.audit;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.security.PrivateKey;
import java.security.PublicKey;
import java.time.Instant;
import java.time.InstantSource;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.fumewarden.codes.InputException;
import org.fumewarden.codes.Problem;
import org.fumewarden.codes.RuleFolder;

/** Keeps advice in a folder, each entry chained to the one before by its hash. */
public final class Keeper {
    private final Path folder;
    private final Chain chain;

    public Keeper(Path folder) {
        this.folder = folder;
        this.chain = new Chain(folder);
    }

    /**
     * What is kept beside advice.
     *
     * @param program the program and version that advised
     * @param rules the rules that decided
     * @param folders the folders of the rules that decide under the code
     * @param foreign the folder of the rules when they are not those of the program
     */
    public record Source(String program, RuleFolder rules, List<String> folders, Optional<String> foreign) {}

    /**
     * Keeps a piece of advice. It is on disk, signed when a key is given, when this returns.
     *
     * @param task the task file as plain maps, lists and words
     * @param advice the advice as JSON text
     * @param clock tells the time of keeping, once nobody else is keeping
     * @return the new file
     * @throws InputException when the chain is damaged, was signed with another key or none, or the clock runs behind it
     */
    public Path keep(Object task, String advice, InstantSource clock, Source source, Optional<PrivateKey> key) {
        ObjectNode content = KeptAdvice.empty();
        content.put("program", source.program());
        source.foreign().ifPresent(f -> content.put(KeptAdvice.FOREIGN, f));
        content.set("task", KeptAdvice.tree(task));
        content.set("advice", KeptAdvice.parse(advice));
        String revision = content.path("advice").path("revision").asText();
        return locked(() -> {
            admit(key);
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
            return append(content, clock.instant(), key);
        });
    }

    /** Keeps what a person said of an entry of this chain. */
    public Path keep(Review review, InstantSource clock, Optional<PrivateKey> key) {
        ObjectNode content = KeptAdvice.empty();
        content.set("review", review.node());
        return locked(() -> {
            admit(key);
            return append(content, clock.instant(), key);
        });
    }

    private interface Keeping {
        Path keep() throws IOException;
    }

    private Path locked(Keeping keeping) {
        try {
            made();
            try (FileChannel lock = FileChannel.open(
                            folder.resolve(".lock"), StandardOpenOption.CREATE, StandardOpenOption.WRITE);
                    var held = lock.lock()) {
                if (!held.isValid()) {
                    throw new IOException("the folder is locked by another program");
                }
                if (!chain.files().isEmpty()) {
                    chain.firstBrokenLink().ifPresent(broken -> {
                        throw refused(
                                "is damaged at " + broken + ". Nothing is added to it.",
                                "find out who changed it, keep it as it is, and begin a new folder.");
                    });
                }
                return keeping.keep();
            }
        } catch (FileSystemException e) {
            throw refused("is a place where nothing can be kept.", "name a folder in which you may write.");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private void made() throws IOException {
        if (Files.exists(folder) && !Files.isDirectory(folder)) {
            throw refused("is a file. Advice is kept in a folder.", "name a folder; it is made when it is not there.");
        }
        try {
            Files.createDirectories(folder);
        } catch (IOException e) {
            throw refused("is a folder that cannot be made here.", "name one in a place where you may write.");
        }
    }

    /** A chain is signed with one key from its first entry, or with none: anything else could never be checked again. */
    private void admit(Optional<PrivateKey> key) {
        Optional<KeptAdvice> last = chain.last();
        if (last.isEmpty()) {
            return;
        }
        Path file = last.get().file();
        String needed = last.get().signedBy().map(f -> "the key " + f).orElse("the key that signed its last entry");
        boolean signed = last.get().signedBy().isPresent() || Files.exists(Signatures.beside(file));
        if (signed && key.isEmpty()) {
            throw refused(
                    "is signed with " + needed + ", and no key was given. Nothing is kept.",
                    "add --sign-with and that key.");
        }
        if (!signed && key.isPresent()) {
            throw refused(
                    "was kept without signatures so far. A key now would leave what is there unsigned for ever. Nothing is kept.",
                    "begin a new folder for what is signed, or leave --sign-with out.");
        }
        if (key.isPresent()) {
            PublicKey open = Signatures.open(key.get());
            Signatures.fault(file, open).ifPresent(f -> {
                throw refused(
                        "is signed with " + needed + ", and this is the key " + Signatures.fingerprint(open)
                                + ", or its last entry lost its signature. Nothing is kept.",
                        "sign with the same key as before.");
            });
        }
    }

    private Path append(ObjectNode content, Instant at, Optional<PrivateKey> key) throws IOException {
        KeptAdvice last = chain.last().orElse(null);
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
        key.ifPresent(k -> content.put(KeptAdvice.SIGNED_BY, Signatures.fingerprint(Signatures.open(k))));
        Path target = folder.resolve(String.format(Locale.ROOT, "%08d%s", sequence, Chain.ENDING));
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
}
