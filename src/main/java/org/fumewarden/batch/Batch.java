package org.fumewarden.batch;

import java.io.IOException;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.Consumer;
import org.fumewarden.batch.Outcome.Fate;

/** Advises on many tasks with several threads. Only a bounded window of tasks is ever in memory. */
public final class Batch {
    /** Tasks under way for each thread: enough that a slow one holds nobody up, few enough to hold in memory. */
    private static final int AHEAD = 32;

    private final LineAdvisor worker;
    private final int threads;

    /**
     * A batch.
     *
     * @param threads at least 1
     */
    public Batch(LineAdvisor worker, int threads) {
        if (threads < 1) {
            throw new IllegalArgumentException("A batch needs a thread, not " + threads + ".");
        }
        this.worker = worker;
        this.threads = threads;
    }

    /** Takes the outcomes in the order of the input. */
    public interface Sink {
        void take(Outcome outcome) throws IOException;
    }

    /**
     * How many tasks came to which end.
     *
     * @param counts no entry means none
     */
    public record Tally(Map<Fate, Long> counts) {
        public Tally {
            counts = Map.copyOf(counts);
        }

        public long of(Fate fate) {
            return counts.getOrDefault(fate, 0L);
        }

        public long all() {
            return counts.values().stream().mapToLong(Long::longValue).sum();
        }
    }

    /**
     * Advises on all tasks that are left in the input.
     *
     * @param progress hears the tally after each task, on the calling thread
     * @throws IOException when the input cannot be read or the sink cannot write
     */
    public Tally run(Entries entries, Sink sink, Consumer<Tally> progress) throws IOException, InterruptedException {
        ExecutorService pool = Executors.newFixedThreadPool(threads);
        Map<Fate, Long> counts = new EnumMap<>(Fate.class);
        Deque<Future<Outcome>> window = new ArrayDeque<>();
        try {
            Optional<Entry> next = entries.next();
            while (next.isPresent() || !window.isEmpty()) {
                while (next.isPresent() && window.size() < threads * AHEAD) {
                    Entry entry = next.get();
                    window.add(pool.submit(() -> worker.answer(entry)));
                    next = entries.next();
                }
                Outcome outcome = outcome(window.remove());
                sink.take(outcome);
                counts.merge(outcome.fate(), 1L, Long::sum);
                progress.accept(new Tally(counts));
            }
            return new Tally(counts);
        } finally {
            pool.shutdownNow();
        }
    }

    private static Outcome outcome(Future<Outcome> future) throws InterruptedException {
        try {
            return future.get();
        } catch (ExecutionException e) {
            // A worker turns exceptions into outcomes; what still comes here, such as no memory, ends the batch.
            throw new IllegalStateException(e.getCause());
        }
    }
}
