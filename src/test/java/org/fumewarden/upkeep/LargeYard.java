package org.fumewarden.upkeep;

import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.function.Consumer;

/** Makes a large store: units, and for each a history of before-use checks with an examination now and then. */
final class LargeYard {
    private static final Instant NOW = Instant.parse("2026-03-02T09:00:00Z");
    private static final int CHECKS_FOR_EACH_EXAMINATION = 20;

    private final int units;
    private final int entries;
    private final Random random = new Random(7);
    private long sequence;

    LargeYard(int units, int entries) {
        this.units = units;
        this.entries = entries;
    }

    void fill(Path file) {
        try (Store store = Store.open(file)) {
            store.restore(this::write);
        }
    }

    private void write(Consumer<LogEntry> target) {
        for (int i = 0; i < units; i++) {
            Item item = Samples.powered("U-" + i);
            put(target, item.id(), LocalDate.parse("2020-01-01"), new Details.Registration(item));
        }
        int turns = (entries - units) / units;
        for (int turn = 0; turn < turns; turn++) {
            for (int i = 0; i < units; i++) {
                put(
                        target,
                        "U-" + i,
                        LocalDate.parse("2020-01-02").plusDays(turn * 30L + random.nextInt(9)),
                        deed(turn));
            }
        }
    }

    private Details deed(int turn) {
        if (turn % CHECKS_FOR_EACH_EXAMINATION == 0) {
            return Samples.examination(random.nextInt(500) == 0 ? Result.FAILED : Result.PASSED);
        }
        return new Details.BeforeUseCheck(Result.PASSED, List.of(), Optional.empty(), Optional.empty(), "");
    }

    private void put(Consumer<LogEntry> target, String item, LocalDate on, Details details) {
        target.accept(new LogEntry(++sequence, item, on, NOW, "Odran Pell", details));
    }

    static Map<String, List<String>> facts() {
        return Map.of("agent", List.of("none"));
    }
}
