package org.fumewarden.upkeep;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** Whether the moments at which entries were written down go forward. */
final class Clocks {
    /** Two machines may differ by as much without anybody being wrong. */
    private static final Duration TOLERANCE = Duration.ofMinutes(5);

    private Clocks() {}

    /** What to say of an entry that was written down before the one ahead of it. */
    static Optional<String> backwards(LogEntry before, LogEntry entry) {
        return entry.recorded().plus(TOLERANCE).isBefore(before.recorded())
                ? Optional.of(
                        "entry " + entry.sequence() + " was written down at " + entry.recorded() + ", before entry "
                                + before.sequence() + " at " + before.recorded()
                                + ": the clock of a machine was wrong, or it came from another store.")
                : Optional.empty();
    }

    static List<String> backwards(List<LogEntry> inOrder) {
        return IntStream.range(1, inOrder.size())
                .mapToObj(i -> backwards(inOrder.get(i - 1), inOrder.get(i)))
                .flatMap(Optional::stream)
                .toList();
    }
}
