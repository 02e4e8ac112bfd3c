package org.fumewarden.check;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.fumewarden.codes.RuleFolder;
import org.junit.jupiter.api.Test;

/** Limits, factors, thresholds and figures are as the published lists have them, typed a second time. */
final class TypedApartTest {
    private final List<TableCell> cells = TableCell.all(RuleFolder.shipped());
    private final TypedApart typed = new TypedApart();

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

    /** A limit or an interval that nobody typed a second time would be a typo that nobody sees. */
    @Test
    void everyLimitAndEveryIntervalIsTyped() {
        Set<String> missing = cells.stream()
                .filter(cell -> cell.isInterval()
                        || cell.isNumber()
                                && (cell.kind().equals("limits") || cell.kind().equals("danger-levels")))
                .filter(cell -> !typed.holds(cell))
                .map(TableCell::key)
                .collect(Collectors.toCollection(TreeSet::new));
        assertEquals(Set.of(), missing, "type them from the published list, with its name");
    }
}
