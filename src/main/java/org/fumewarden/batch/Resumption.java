package org.fumewarden.batch;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Optional;
import org.fumewarden.batch.Outcome.Fate;
import org.fumewarden.codes.InputException;
import org.fumewarden.codes.Problem;

/**
 * Walks the input and both result files side by side, and says of each task whether its line still answers it.
 *
 * <p>A line answers when it is as it was written and its task is as it was read. For one thread.
 */
final class Resumption implements AutoCloseable {
    /**
     * Where to go on.
     *
     * @param adviceEnd bytes of the file of advice that are kept
     * @param rejectsEnd bytes of the file of rejects that are kept
     * @param advised tasks that have advice
     * @param rejected tasks that were rejected
     * @param stale lines that no longer answer a task: the task or the line was changed; 0 when the files are a clean beginning
     */
    record Place(long adviceEnd, long rejectsEnd, long advised, long rejected, long stale) {}

    private final Entries entries;
    private final Path advice;
    private final WrittenLines advised;
    private final WrittenLines rejected;
    private long stale;

    Resumption(Path advice, Path rejects, Entries entries) throws IOException {
        this.entries = entries;
        this.advice = advice;
        this.advised = WrittenLines.open(advice, ResultFiles.ADVICE);
        try {
            this.rejected = WrittenLines.open(rejects, ResultFiles.REJECTS);
        } catch (IOException | RuntimeException e) {
            advised.close();
            throw e;
        }
    }

    /**
     * Finds the first task without a line and takes the input there.
     *
     * @throws InputException when the files belong to another input, or the last kept line would now come out differently
     */
    Place find(LineAdvisor worker) throws IOException {
        long good = 0;
        long refused = 0;
        long holes = 0;
        Optional<Outcome> last = Optional.empty();
        Entry lastTask = null;
        long adviceEnd = advised.at();
        long rejectsEnd = rejected.at();
        while (advised.peek().isPresent() || rejected.peek().isPresent()) {
            Optional<Entry> entry = entries.peek();
            if (entry.isEmpty()) {
                throw differs("holds more lines than the input has tasks.");
            }
            Optional<Outcome> kept = kept(entry.get());
            // Rejects are written at once and advice in blocks, so after a kill rejects may be ahead: those are made
            // again.
            if (kept.isEmpty() && advised.peek().isEmpty()) {
                break;
            }
            entries.next();
            if (kept.isEmpty()) {
                holes++;
                continue;
            }
            last = kept;
            lastTask = entry.get();
            good += kept.get().advised() ? 1 : 0;
            refused += kept.get().advised() ? 0 : 1;
            adviceEnd = advised.at();
            rejectsEnd = rejected.at();
        }
        if (last.isEmpty() && stale > 0) {
            throw differs("was written from another input.");
        }
        if (last.isPresent()
                && !worker.answer(lastTask).json().equals(last.get().json())) {
            throw differs("was written from another input, other rules or other options.");
        }
        return new Place(adviceEnd, rejectsEnd, good, refused, Math.max(stale, holes));
    }

    /** The line that answers the task, if there is one; lines that answer nothing are passed over and counted. */
    private Optional<Outcome> kept(Entry entry) throws IOException {
        Optional<Outcome> one = kept(advised, entry, Fate.ADVISED);
        Optional<Outcome> other = kept(rejected, entry, Fate.REJECTED);
        return one.or(() -> other);
    }

    private Optional<Outcome> kept(WrittenLines lines, Entry entry, Fate fate) throws IOException {
        while (lines.peek().filter(l -> l.number() <= entry.number()).isPresent()) {
            WrittenLines.Line line = lines.next().orElseThrow();
            if (line.answers(entry)) {
                return Optional.of(new Outcome(entry.number(), fate, new String(line.bytes(), StandardCharsets.UTF_8)));
            }
            stale++;
        }
        return Optional.empty();
    }

    /** The input, with the line that answers it in the place of each task that has one. */
    Entries mended() {
        return Entries.of(() -> {
            Optional<Entry> entry = entries.next();
            if (entry.isEmpty()) {
                return entry;
            }
            Optional<Outcome> kept = kept(entry.get());
            return kept.isPresent() ? kept.map(Entry.Settled::new) : entry;
        });
    }

    @Override
    public void close() throws IOException {
        try (advised;
                rejected) {
            // The input belongs to the caller.
        }
    }

    private InputException differs(String message) {
        return new InputException(new Problem(
                advice.toString(),
                0,
                "",
                message,
                "begin anew with another --out, or give what the first run was given."));
    }
}
