package org.fumewarden.check;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;

/**
 * Values of the tables typed a second time from the published lists, apart from the tables, each with its source. What a source could
 * not be reached for says so: then it is memory twice, which finds a slip of the hand and no error of the memory.
 */
final class TypedApart {
    private static final List<String> FILES = List.of(
            "limits",
            "danger-levels",
            "molar-masses",
            "factors",
            "thresholds",
            "gas-filters",
            "work-rates",
            "shades",
            "emission",
            "endurance",
            "intervals");

    private final Map<String, String> values = new LinkedHashMap<>();
    private final Map<String, String> sources = new LinkedHashMap<>();

    TypedApart() {
        FILES.forEach(this::read);
    }

    private void read(String name) {
        CSVFormat format = CSVFormat.DEFAULT
                .builder()
                .setHeader()
                .setSkipHeaderRecord(true)
                .get();
        try (Reader in = new InputStreamReader(
                        TypedApart.class.getResourceAsStream("typed-apart/" + name + ".csv"), StandardCharsets.UTF_8);
                var records = format.parse(in)) {
            for (CSVRecord line : records) {
                String key = line.get("table") + " / " + line.get("row") + " / " + line.get("cell");
                if (values.put(key, line.get("value")) != null) {
                    throw new IllegalStateException(name + ".csv holds " + key + " twice");
                }
                sources.put(key, line.get("source"));
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The cells that were typed, with the source of each. */
    Map<String, String> sources() {
        return sources;
    }

    /** What was typed, when the table says something else. */
    Optional<String> differs(TableCell cell) {
        String typed = values.get(cell.key());
        if (typed == null) {
            return Optional.empty();
        }
        boolean same = cell.isNumber()
                ? cell.number().compareTo(new BigDecimal(typed)) == 0
                : cell.value().equals(typed);
        return same ? Optional.empty() : Optional.of(typed);
    }

    boolean holds(TableCell cell) {
        return values.containsKey(cell.key());
    }
}
