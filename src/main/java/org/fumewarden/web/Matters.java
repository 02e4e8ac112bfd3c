package org.fumewarden.web;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CancellationException;
import org.fumewarden.advice.Bench;
import org.fumewarden.model.Kept;

/**
 * Which questions matter, kept for tasks that were asked about before.
 *
 * <p>Only the last task a person typed is worth an answer: a newer question of the same page ends the work on the one before
 * it.
 */
final class Matters {
    private static final int KEPT = 32;

    private final Kept<String, List<String>> found = new Kept<>(KEPT);
    private final Map<String, Thread> working = new HashMap<>();

    /**
     * The ids of the questions that matter for a task.
     *
     * @param page tells one open page from another
     * @throws CancellationException when a newer question of the page came meanwhile
     */
    List<String> of(String page, String task, Bench bench) {
        synchronized (this) {
            List<String> known = found.get(task);
            if (known != null) {
                return known;
            }
            Thread before = working.put(page, Thread.currentThread());
            if (before != null) {
                before.interrupt();
            }
        }
        try {
            return found.of(task, t -> new Relevance(bench).questions());
        } finally {
            synchronized (this) {
                working.remove(page, Thread.currentThread());
            }
        }
    }
}
