package org.fumewarden.audit;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.PublicKey;
import java.time.Duration;
import java.time.Instant;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.fumewarden.codes.InputException;

/** The entries of a folder of kept advice, and what is wrong with them as a chain. */
public final class Chain {
    static final String ENDING = ".kept.json";

    /** How far two clocks may differ before an entry counts as one from the future. */
    private static final Duration TOLERANCE = Duration.ofMinutes(5);

    private final Path folder;

    public Chain(Path folder) {
        this.folder = folder;
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

    /** The entries in order. */
    public List<KeptAdvice> entries() {
        return files().stream().map(KeptAdvice::read).toList();
    }

    /** The last entry; empty for an empty chain. */
    public Optional<KeptAdvice> last() {
        List<Path> files = files();
        return files.isEmpty() ? Optional.empty() : Optional.of(KeptAdvice.read(files.get(files.size() - 1)));
    }

    /** The first thing wrong with the chain, in words; empty when every entry follows the one before it and is what an entry is. */
    public Optional<String> firstBrokenLink() {
        String previous = KeptAdvice.GENESIS;
        Instant before = Instant.MIN;
        long expected = 1;
        Set<String> advice = new HashSet<>();
        for (Path file : files()) {
            KeptAdvice kept;
            try {
                kept = KeptAdvice.read(file);
            } catch (InputException e) {
                return Optional.of(file.getFileName() + ": it cannot be read as kept advice");
            }
            Optional<String> fault = fault(kept, expected, previous, before)
                    .or(kept::oddity)
                    .or(() -> kept.review()
                            .filter(r -> !advice.contains(r.of()))
                            .map(r -> "it is a review, and speaks of no advice that was kept before it"));
            if (fault.isPresent()) {
                return Optional.of(file.getFileName() + ": " + fault.get());
            }
            previous = kept.hash();
            before = kept.keptAt().orElse(before);
            expected++;
            if (kept.review().isEmpty()) {
                advice.add(kept.hash());
            }
        }
        return expected == 1 ? Optional.of(folder.getFileName() + ": it holds no entries") : Optional.empty();
    }

    private static Optional<String> fault(KeptAdvice kept, long expected, String previous, Instant before) {
        if (!kept.intact()) {
            return Optional.of("its bytes do not match its hash");
        }
        if (kept.sequence() > expected) {
            return Optional.of("number " + expected + " is missing before number " + kept.sequence());
        }
        if (kept.sequence() < expected) {
            return Optional.of("it has number " + kept.sequence() + ", where number " + expected
                    + " belongs; it stands here twice");
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

    /** The first entry that says it was kept later than now, in words. */
    public Optional<String> firstFromTheFuture(Instant now) {
        return entries().stream().flatMap(e -> fromTheFuture(e, now).stream()).findFirst();
    }

    /** What is said of an entry that was kept later than now. */
    static Optional<String> fromTheFuture(KeptAdvice kept, Instant now) {
        return kept.keptAt()
                .filter(at -> at.isAfter(now.plus(TOLERANCE)))
                .map(at -> "FROM THE FUTURE: entry " + kept.sequence() + " says that it was kept at " + at
                        + ", and this clock says " + now + ". A difference of " + TOLERANCE.toMinutes()
                        + " minutes is allowed.");
    }

    /** The first entry without a signature by this key, in words. */
    public Optional<String> firstUnsigned(PublicKey key) {
        return files().stream()
                .flatMap(file -> Signatures.fault(file, key).map(f -> file.getFileName() + ": " + f).stream())
                .findFirst();
    }
}
