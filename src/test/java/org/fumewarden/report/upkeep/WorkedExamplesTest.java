package org.fumewarden.report.upkeep;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** Every worked example of days, retention and decisions about upkeep, by its id and with the document it follows from. */
class WorkedExamplesTest {
    /** Examples that the program cannot decide, with the reason; none is left. */
    private static final Map<String, String> UNDECIDED = Map.of();

    private static List<WorkedExample> all() {
        return Stream.concat(DateExamples.all().stream(), DecisionExamples.all().stream())
                .toList();
    }

    @TestFactory
    Stream<DynamicTest> examples() {
        return all().stream().map(e -> DynamicTest.dynamicTest(e.id() + ": " + e.source(), e.check()));
    }

    /** 14 computed, 5 published and 15 decided examples, with odd numbers. */
    @Test
    void decidedAndUndecidedTogetherAreTheWhole() {
        List<String> whole = Stream.of(odd("c", 27), odd("d", 29), odd("p", 9))
                .flatMap(s -> s)
                .toList();
        TreeSet<String> known = new TreeSet<>(UNDECIDED.keySet());
        for (WorkedExample example : all()) {
            assertTrue(known.add(example.id()), example.id() + " stands twice");
        }
        assertEquals(whole, List.copyOf(known));
        UNDECIDED.forEach((id, why) -> assertFalse(why.isBlank(), id));
    }

    private static Stream<String> odd(String letter, int last) {
        return IntStream.rangeClosed(1, last).filter(n -> n % 2 == 1).mapToObj(n -> "%s%02d".formatted(letter, n));
    }
}
