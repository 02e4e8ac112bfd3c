package org.fumewarden.check.oracle;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.fumewarden.codes.CodeBook;
import org.fumewarden.model.Benchmark;
import org.fumewarden.model.Limit;
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

    @SuppressWarnings("unchecked")
    public <T> List<T> all(Class<T> type) {
        return (List<T>) rows.getOrDefault(type, List.of());
    }

    public boolean in(String set, String item) {
        return sets.getOrDefault(set, Set.of()).contains(item);
    }

    /** Limits of the code for the agent; without any the benchmarks of the code itself, then those it borrows. */
    public List<Limit> yardsticks(String code, String agent) {
        List<Limit> limits =
                all(Limit.class).stream().filter(l -> l.agent().equals(agent)).toList();
        List<Limit> benchmarks = all(Benchmark.class).stream()
                .filter(b -> b.agent().equals(agent))
                .map(Benchmark::asLimit)
                .toList();
        List<Limit> own = benchmarks.stream()
                .filter(b -> b.ref().table().equals(code + "-benchmarks"))
                .toList();
        return !limits.isEmpty() ? limits : !own.isEmpty() ? own : benchmarks;
    }
}
