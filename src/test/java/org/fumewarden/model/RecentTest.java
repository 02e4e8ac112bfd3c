package org.fumewarden.model;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Optional;
import org.junit.jupiter.api.Test;

final class RecentTest {
    @Test
    void theKeyThatNobodyAskedAboutMakesRoom() {
        Recent<String, Integer> recent = new Recent<>(2);
        recent.keep("a", 1);
        recent.keep("b", 2);
        assertEquals(Optional.of(1), recent.of("a"));
        assertEquals(3, recent.keep("c", 3));
        assertEquals(Optional.empty(), recent.of("b"));
        assertEquals(Optional.of(1), recent.of("a"));
        assertEquals(Optional.of(3), recent.of("c"));
    }
}
