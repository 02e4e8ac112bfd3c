package org.fumewarden.upkeep;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.Period;
import java.util.List;
import java.util.Optional;
import org.fumewarden.model.Duty;
import org.fumewarden.model.Force;
import org.fumewarden.model.Subject;

/**
 * Times {@code due} on large stores.
 *
 * <p>Run it with the test class path: {@code java -cp ... org.fumewarden.upkeep.DueBenchmark FOLDER}. It prints one line for
 * each size; with the same units, more entries must cost next to nothing.
 */
final class DueBenchmark {
    private static final int[][] SIZES = {{10_000, 60_000}, {10_000, 200_000}, {10_000, 600_000}};

    private DueBenchmark() {}

    public static void main(String[] arguments) throws IOException {
        Path folder = Files.createTempDirectory(Path.of(arguments[0]), "due-");
        for (int[] size : SIZES) {
            Path file = folder.resolve(size[0] + "-" + size[1] + ".db");
            long started = System.nanoTime();
            new LargeYard(size[0], size[1]).fill(file);
            System.out.printf(
                    "%,d units, %,d entries: %,d MB, filled in %.1f s%n",
                    size[0], size[1], Files.size(file) >> 20, seconds(started));
            for (int turn = 0; turn < 3; turn++) {
                started = System.nanoTime();
                int listed = due(file);
                System.out.printf("  due: %,d listed in %.2f s%n", listed, seconds(started));
            }
            Files.delete(file);
        }
        Files.delete(folder);
    }

    private static int due(Path file) {
        List<Duty> duties = List.of(
                Samples.duty("monthly", "P1M", Subject.UNIT, "examination", Force.ACOP),
                Samples.duty("flow", "P1M", Subject.UNIT, "examination", Force.ACOP),
                Samples.duty("cleaning", "P7D", Subject.UNIT, "cleaning", Force.GUIDANCE));
        try (Store store = Store.read(file)) {
            return new DueList(store, duties, LocalDate.parse("2026-03-02"), Period.ofDays(7))
                    .compute(LargeYard.facts(), Optional.empty())
                    .owings()
                    .size();
        }
    }

    private static double seconds(long started) {
        return (System.nanoTime() - started) / 1e9;
    }
}
