package org.fumewarden.check.oracle;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.fumewarden.codes.CodeBook;
import org.fumewarden.model.Member;
import org.fumewarden.model.Row;

/** The rows of a code on one day, by type, and the named sets among them. */
public record Tables(Map<Class<?>, List<Object>> rows, Map<String, Set<String>> sets) {
    public static Tables of(CodeBook book, LocalDate day) {
        Map<Class<?>, List<Object>> rows = new HashMap<>();
        Map<String, Set<String>> sets = new HashMap<>();
        for (Row row : book.rows(day)) {
            rows.computeIfAbsent(row.getClass(), k -> new ArrayList<>()).add(row);
            if (row instanceof Member member) {
                sets.computeIfAbsent(member.set(), k -> new TreeSet<>()).add(member.item());
            }
        }
        return new Tables(rows, sets);
    }

    public <T> List<T> all(Class<T> type) {
        return rows.getOrDefault(type, List.of()).stream().map(type::cast).toList();
    }

    boolean in(String set, String item) {
        return sets.getOrDefault(set, Set.of()).contains(item);
    }
}
