package org.fumewarden.web;

import java.time.Duration;
import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.Future;
import java.util.concurrent.RejectedExecutionException;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;

/** Runs work that must end in time; work beyond that is stopped, and a full queue is refused. */
final class TimeLimit implements AutoCloseable {
    private static final int WORKERS = 4;
    private static final int WAITING = 32;

    private final Duration limit;
    private final ThreadPoolExecutor workers;

    TimeLimit(Duration limit) {
        this.limit = limit;
        this.workers = new ThreadPoolExecutor(
                WORKERS, WORKERS, 1, TimeUnit.MINUTES, new ArrayBlockingQueue<>(WAITING), work -> {
                    Thread thread = new Thread(work, "fumewarden-work");
                    thread.setDaemon(true);
                    return thread;
                });
    }

    /** Does the work, or says that it took too long. */
    Reply run(Callable<Reply> work) throws ExecutionException, InterruptedException {
        Future<Reply> running;
        try {
            running = workers.submit(work);
        } catch (RejectedExecutionException e) {
            return Reply.busy("waits behind too much other work.", "try again in a moment.");
        }
        try {
            return running.get(limit.toMillis(), TimeUnit.MILLISECONDS);
        } catch (TimeoutException e) {
            running.cancel(true);
            return Reply.busy(
                    "took longer than " + limit.toMillis() / 1000.0 + " s and was stopped.", "ask for less at once.");
        }
    }

    @Override
    public void close() {
        workers.shutdownNow();
    }
}
