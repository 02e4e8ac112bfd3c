package org.fumewarden.training;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.fumewarden.codes.Located;
import org.fumewarden.codes.ProgramFile;
import org.fumewarden.codes.YamlFiles;

/** A table of the training room. It teaches: no rule reads it, and it decides nothing. */
final class WordTable {
    private static final Map<String, List<Row>> READ = new ConcurrentHashMap<>();

    private WordTable() {}

    /** A row as plain words, lists and maps. */
    record Row(Map<?, ?> values) {
        String text(String key) {
            return optional(key)
                    .orElseThrow(() -> new IllegalStateException("a row of the training room lacks " + key));
        }

        Optional<String> optional(String key) {
            return Optional.ofNullable(values.get(key)).map(String::valueOf);
        }

        List<String> words(String key) {
            Object value = values.get(key);
            return value instanceof List<?> list
                    ? list.stream().map(String::valueOf).toList()
                    : value == null ? List.of() : List.of(String.valueOf(value));
        }

        Row row(String key) {
            return new Row(values.get(key) instanceof Map<?, ?> map ? map : Map.of());
        }

        List<Row> list(String key) {
            List<?> items = values.get(key) instanceof List<?> list ? list : List.of();
            return items.stream().map(item -> new Row((Map<?, ?>) item)).toList();
        }

        /** The sentence in a language; in English where it has none. */
        String says(String language) {
            return optional(language).orElseGet(() -> text("en"));
        }
    }

    /** The rows of a table, in the order of its file. */
    static List<Row> rows(String name) {
        return READ.computeIfAbsent(name, WordTable::read);
    }

    private static List<Row> read(String name) {
        String file = name + ".yaml";
        Located root = YamlFiles.parse(file, YamlFiles.text(file, ProgramFile.bytes(WordTable.class, file)));
        List<Row> rows = root.items().stream()
                .map(item -> new Row((Map<?, ?>) item.plain()))
                .toList();
        root.settle();
        return rows;
    }
}
