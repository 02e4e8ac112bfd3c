package org.fumewarden.benchmark;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.Arrays;

/**
 * The same growth as {@link EngineBenchmark}, for a machine that other work shares: both rule bases in one process,
 * turn about, in processor time of the thread instead of time on the wall. Argument: rounds, of which half warm up.
 */
public final class RuleGrowth {
    private static final int[] UNRELATED = {0, 400};

    private RuleGrowth() {}

    public static void main(String[] arguments) throws IOException {
        int rounds = arguments.length > 0 ? Integer.parseInt(arguments[0]) : 2000;
        EngineBenchmark[] engines = new EngineBenchmark[UNRELATED.length];
        long[][] nanos = new long[UNRELATED.length][rounds];
        for (int i = 0; i < engines.length; i++) {
            engines[i] = new EngineBenchmark();
            engines[i].unrelated = UNRELATED[i];
            engines[i].prepare();
            System.out.printf("%d unrelated beside them: %d rules%n", UNRELATED[i], engines[i].rules());
        }
        ThreadMXBean clock = ManagementFactory.getThreadMXBean();
        for (int round = 0; round < rounds; round++) {
            for (int i = 0; i < engines.length; i++) {
                long began = clock.getCurrentThreadCpuTime();
                engines[i].advise();
                nanos[i][round] = clock.getCurrentThreadCpuTime() - began;
            }
        }
        for (int i = 0; i < engines.length; i++) {
            long[] warm = Arrays.copyOfRange(nanos[i], rounds / 2, rounds);
            Arrays.sort(warm);
            System.out.printf(
                    "%d unrelated: median %.3f ms of the processor, quarters %.3f and %.3f%n",
                    UNRELATED[i],
                    warm[warm.length / 2] / 1e6,
                    warm[warm.length / 4] / 1e6,
                    warm[warm.length * 3 / 4] / 1e6);
            engines[i].clear();
        }
    }
}
