package org.fumewarden;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.function.Function;

/**
 * How much a run tries of what is too much for every run: {@code -Dfumewarden.extent=gate}, {@code ci} or {@code whole}. A test
 * tagged {@code ci} is not in the gate, one tagged {@code long} in the whole alone. {@code -Dfumewarden.seed=7} takes others.
 */
public enum Extent {
    GATE,
    CI,
    WHOLE;

    public static final Extent NOW =
            valueOf(System.getProperty("fumewarden.extent", "gate").toUpperCase(Locale.ROOT));
    public static final long SEED = Long.getLong("fumewarden.seed", 20_260_302L);
    public static final int ALL = Integer.MAX_VALUE;

    /** The size of a sample in this run. */
    public static int of(int gate, int ci, int whole) {
        return List.of(gate, ci, whole).get(NOW.ordinal());
    }

    /** A sample that a new member hardly changes: those whose names come first when scattered by the seed. */
    public static <T> List<T> sample(List<T> all, Function<T, String> name, int size) {
        return all.stream()
                .sorted(Comparator.comparing(
                                (T one) -> new Random(SEED ^ name.apply(one).hashCode()).nextLong())
                        .thenComparing(name))
                .limit(size)
                .toList();
    }
}
