package org.fumewarden.exposure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class NumericsSelfCheckTest {

    @Test
    void everyPromiseOfAccuracyIsKept() {
        NumericsSelfCheck.measure().forEach(line -> assertTrue(line.kept(), line.toString()));
        assertEquals(9, NumericsSelfCheck.measure().size());
        assertEquals(
                44 + 9 + 2 + 2 + 2 + 12,
                NumericsSelfCheck.measure().stream()
                        .mapToInt(NumericsSelfCheck.Line::cases)
                        .sum());
    }

    @Test
    void toleranceFactorsKeepMoreThanTheNineDigitsAskedFor() {
        NumericsSelfCheck.measure().stream()
                .filter(line -> line.function().startsWith("tolerance"))
                .forEach(line -> assertTrue(line.largestError() < 1e-10, line.toString()));
    }

    @Test
    void theTableSaysWhatWasMeasured() {
        String text = NumericsSelfCheck.text();
        assertTrue(text.contains("tolerance factor 95/70"), text);
        assertFalse(text.contains("BROKEN"), text);
    }

    @Test
    void aWrongNumberWouldBeSeen() {
        assertFalse(new NumericsSelfCheck.Line("any", 1, 1e-6, 1e-9, "none").kept());
    }
}
