package org.fumewarden.check;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.fumewarden.codes.RuleFolder;
import org.junit.jupiter.api.Test;

/** Limits, factors, thresholds and figures are as the published lists have them, typed a second time. */
final class TypedApartTest {
    private final List<TableCell> cells = TableCell.all(RuleFolder.shipped());
    private final ShippedValues typed = new ShippedValues();

    @Test
    void theTablesSayWhatTheListsSay() {
        List<String> wrong = cells.stream()
                .flatMap(cell -> typed.differs(cell).stream()
                        .map(value -> cell.file() + ":" + cell.line() + " " + cell.key() + " is " + cell.value()
                                + ", but " + typed.sources().get(cell.key()) + " has " + value))
                .toList();
        assertEquals(List.of(), wrong);
    }

    @Test
    void everyTypedValueStandsInATable() {
        Set<String> gone = new TreeSet<>(typed.sources().keySet());
        cells.forEach(cell -> gone.remove(cell.key()));
        assertEquals(Set.of(), gone, "no table holds these cells any more");
    }
}
