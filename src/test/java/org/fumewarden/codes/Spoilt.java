package org.fumewarden.codes;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.fumewarden.Extent;

/** Gives a reader many spoilt files: it reads them or says what is wrong, and does neither slowly. */
public final class Spoilt {
    private static final long SEED = Extent.SEED;
    private static final int FACTOR = Extent.of(1, 2, 200);
    private static final long SLOWEST_SECONDS = 10;

    /** A reader under test. */
    public interface Reader {
        void read(byte[] bytes) throws Exception;
    }

    private Spoilt() {}

    /**
     * Runs a reader; the long run reads two hundred times as many files.
     *
     * @param times files in the gate
     */
    public static void run(String what, int times, List<byte[]> corpus, Reader reader) {
        Mutator mutator = new Mutator(corpus);
        int files = times * FACTOR;
        int refused = 0;
        List<String> faults = new ArrayList<>();
        for (long seed = SEED; seed < SEED + files; seed++) {
            long start = System.nanoTime();
            try {
                reader.read(mutator.spoilt(seed));
            } catch (InputException e) {
                refused++;
                e.problems().forEach(Spoilt::readable);
            } catch (Exception | StackOverflowError | OutOfMemoryError e) {
                StackTraceElement[] trace = e.getStackTrace();
                faults.add("seed " + seed + ": " + e + (trace.length > 0 ? " at " + trace[0] : ""));
            }
            if (System.nanoTime() - start > TimeUnit.SECONDS.toNanos(SLOWEST_SECONDS)) {
                faults.add("seed " + seed + ": slower than " + SLOWEST_SECONDS + " s");
            }
        }
        System.out.println(what + ": " + files + " spoilt files from seed " + SEED + ", refused " + refused + ", read "
                + (files - refused - faults.size()) + ", faults " + faults.size());
        assertEquals(0, faults.size(), String.join("\n", faults.subList(0, Math.min(8, faults.size()))));
    }

    private static void readable(Problem problem) {
        assertTrue(!problem.file().isBlank(), problem.toString());
        assertTrue(problem.line() >= 0, problem.toString());
        assertTrue(!problem.message().isBlank() && !problem.remedy().isBlank(), problem.toString());
        String text = problem.text();
        assertEquals(2, text.lines().count(), text);
        assertTrue(
                text.chars().noneMatch(c -> c != '\n' && Character.isISOControl(c)),
                () -> text.replaceAll("\\p{Cntrl}", "?"));
    }
}
