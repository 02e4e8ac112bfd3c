package org.fumewarden.task;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.fumewarden.codes.Located;
import org.fumewarden.exposure.NonDetects;
import org.fumewarden.exposure.Statistic;
import org.fumewarden.exposure.TimeWeightedAverage;

/** The words of a task file for choices of the exposure arithmetic. */
public final class Choices {
    private Choices() {}

    /** Treatments of samples below their detection limit. */
    public static Set<String> nonDetects() {
        return words(NonDetects.values()).keySet();
    }

    /** Statistics that may be asked for. */
    public static Set<String> statistics() {
        return words(Statistic.values()).keySet();
    }

    /** Ways to count the part of a shift that nobody sampled. */
    public static Set<String> unsampled() {
        return words(TimeWeightedAverage.Unsampled.values()).keySet();
    }

    /** The word of a choice, such as {@code percentile-95}. */
    public static String word(Enum<?> choice) {
        return choice.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** The choice that a place names; empty when it is absent, with a complaint when it is wrong. */
    static <E extends Enum<E>> Optional<E> read(Located place, E[] choices) {
        Map<String, E> words = words(choices);
        return Optional.ofNullable(place).flatMap(p -> p.oneOf(words.keySet())).map(words::get);
    }

    private static <E extends Enum<E>> Map<String, E> words(E[] choices) {
        return Arrays.stream(choices)
                .collect(Collectors.toMap(Choices::word, Function.identity(), (a, b) -> a, LinkedHashMap::new));
    }
}
