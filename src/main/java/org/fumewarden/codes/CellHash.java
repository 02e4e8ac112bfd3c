package org.fumewarden.codes;

import java.lang.reflect.RecordComponent;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.fumewarden.model.CountedAs;
import org.fumewarden.model.Keyed;
import org.fumewarden.model.Row;
import org.fumewarden.model.RowRef;
import org.fumewarden.model.Sha256;
import org.fumewarden.model.Unit;

/** A short name of what a row says, so that a check of it holds for that value only. */
final class CellHash {
    private static final int DIGITS = 16;

    private CellHash() {}

    /** The first digits of a SHA-256 over the address and every cell, however a number is written. */
    static String of(Row row) {
        String cells = Arrays.stream(row.getClass().getRecordComponents())
                .map(cell -> cell.getName() + "=" + plain(value(cell, row)))
                .filter(words -> !words.startsWith("ref="))
                .collect(Collectors.joining("\n"));
        String all = row.ref().address() + "\n" + String.join(" ", row.ref().beside()) + "\n" + cells;
        return Sha256.hex(all.getBytes(StandardCharsets.UTF_8)).substring(0, DIGITS);
    }

    /** What a row says, in words, without its address: that which somebody compares. */
    static String words(Row row) {
        return Arrays.stream(row.getClass().getRecordComponents())
                .map(cell -> Map.entry(cell.getName(), value(cell, row)))
                .filter(cell -> !(cell.getValue() instanceof RowRef)
                        && !cell.getValue().equals(Optional.empty())
                        && !cell.getValue().equals(new CountedAs(CountedAs.LISTED))
                        && !cell.getValue().equals(CountedAs.LISTED))
                .map(cell -> cell.getKey() + " " + word(cell.getValue()))
                .collect(Collectors.joining(", "));
    }

    private static String word(Object value) {
        return value instanceof Optional<?> maybe
                ? maybe.map(CellHash::word).orElse("none")
                : value instanceof Unit unit
                        ? unit.symbol()
                        : value instanceof Keyed keyed
                                ? keyed.key()
                                : value instanceof CountedAs basis
                                        ? basis.after().strip()
                                        : plain(value);
    }

    /** The numbers of a row. */
    static List<BigDecimal> numbers(Row row) {
        return Arrays.stream(row.getClass().getRecordComponents())
                .map(cell -> value(cell, row))
                .flatMap(value -> value instanceof Optional<?> maybe ? maybe.stream() : Stream.of(value))
                .filter(BigDecimal.class::isInstance)
                .map(BigDecimal.class::cast)
                .toList();
    }

    private static Object value(RecordComponent cell, Row row) {
        try {
            return cell.getAccessor().invoke(row);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException("a row hides its " + cell.getName(), e);
        }
    }

    private static String plain(Object value) {
        if (value instanceof RowRef) {
            return "";
        }
        if (value instanceof Optional<?> maybe) {
            return maybe.map(CellHash::plain).orElse("none");
        }
        return value instanceof BigDecimal number ? number.stripTrailingZeros().toPlainString() : value.toString();
    }
}
