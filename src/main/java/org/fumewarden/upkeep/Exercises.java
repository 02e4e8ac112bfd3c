package org.fumewarden.upkeep;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * The exercises of a fit test with what came out of each, as the log spells them: {@code normal breathing: 2500, talking: passed}.
 *
 * @param each empty when none was written down with its outcome
 */
record Exercises(List<Exercise> each) {
    /**
     * One exercise.
     *
     * @param factor of a quantitative test; empty where only passed or failed was written
     */
    record Exercise(String name, Optional<BigDecimal> factor, boolean failed) {}

    Exercises {
        each = List.copyOf(each);
    }

    /**
     * Reads them; words without a colon tell nothing of an outcome and count as a remark.
     *
     * @throws StoreException when an outcome is neither a number nor passed or failed
     */
    static Exercises read(String text) {
        List<Exercise> each = new ArrayList<>();
        Arrays.stream(text.split("[,;\n]"))
                .map(String::strip)
                .filter(part -> part.contains(":"))
                .forEach(part -> each.add(exercise(part)));
        return new Exercises(each);
    }

    private static Exercise exercise(String part) {
        int colon = part.lastIndexOf(':');
        String name = part.substring(0, colon).strip();
        String outcome = part.substring(colon + 1).strip().toLowerCase(java.util.Locale.ROOT);
        if (outcome.matches("[0-9]{1,9}(\\.[0-9]{1,9})?")) {
            return new Exercise(name, Optional.of(new BigDecimal(outcome)), false);
        }
        if (outcome.equals("passed") || outcome.equals("failed")) {
            return new Exercise(name, Optional.empty(), outcome.equals("failed"));
        }
        throw StoreException.refused(
                "exercises has \"" + outcome + "\" for " + name + ", which is no outcome.",
                "write a fit factor, passed or failed behind each colon: \"normal breathing: 2500, talking: passed\".");
    }

    Optional<Exercise> lowest() {
        return each.stream().filter(e -> e.factor().isPresent()).min(Comparator.comparing(e -> e.factor()
                .orElseThrow()));
    }

    Optional<Exercise> failed() {
        return each.stream().filter(Exercise::failed).findFirst();
    }
}
