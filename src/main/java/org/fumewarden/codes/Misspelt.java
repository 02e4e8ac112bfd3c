package org.fumewarden.codes;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Ids that somebody's tables have in the place of those of the program: a row under another id is read by no rule, which nothing
 * else would say. One that is meant is typed a second time, like all that is added.
 */
final class Misspelt {
    /** Cells whose words are for people. */
    private static final Set<String> TEXT = Set.of(
            "name",
            "says",
            "do",
            "ask",
            "note",
            "reason",
            "clause",
            "edition",
            "confidence",
            "beside",
            "searched",
            "title",
            "issuer",
            "issuers",
            "territory",
            "covers",
            "lacks",
            "record",
            "cas",
            "colour",
            "unit");

    private static final Pattern ID = Pattern.compile("\\p{L}[\\p{L}0-9]*(-[\\p{L}0-9]+)*");
    private static final Pattern BETWEEN = Pattern.compile("[^\\p{L}0-9-]+");
    private static final Set<String> HEAD = Set.of("id", "kind", "source");

    private Misspelt() {}

    /** An id with the place where it stands. */
    private record Found(String column, String id, WrittenCell cell) {
        boolean isIn(Set<String> some) {
            return some.contains(id);
        }
    }

    /** Each id that no table of the program has, in a column of a table from which one of the program is gone. */
    static List<Problem> in(RuleFolder folder) {
        RuleFolder program = folder.program();
        List<Found> now = ids(WrittenCell.every(folder.like(program)));
        List<Found> before = ids(WrittenCell.every(program));
        Map<String, List<String>> gone = gone(before, now);
        if (gone.isEmpty()) {
            return List.of();
        }
        Set<String> known = ids(WrittenCell.every(RuleFolder.shipped())).stream()
                .map(Found::id)
                .collect(Collectors.toSet());
        TypedApart.beside(folder).lines().stream()
                .flatMap(line -> Stream.of(line.row(), line.value()))
                .flatMap(text -> Stream.of(text.split("[ ,]+")))
                .forEach(known::add);
        Set<String> told = new HashSet<>();
        return now.stream()
                .filter(found ->
                        gone.containsKey(found.column()) && !found.isIn(known) && told.add(found.column() + found.id()))
                .map(found -> problem(found, gone.get(found.column())))
                .toList();
    }

    private static Problem problem(Found found, List<String> gone) {
        WrittenCell cell = found.cell();
        return new Problem(
                cell.file(),
                cell.line(),
                cell.cell(),
                "is \"" + Located.shown(found.id()) + "\", which no table of the program has; "
                        + String.join(", ", gone) + " is gone from here.",
                Nearest.remedy(found.id(), gone) + " Where it is meant, type it a second time: a line " + cell.table()
                        + "," + cell.row() + "," + cell.cell() + ",VALUE,DOCUMENT in " + RuleFolder.TYPED
                        + " beside the rules.");
    }

    /** By column, the ids of the program that stand there less often now. */
    private static Map<String, List<String>> gone(List<Found> before, List<Found> now) {
        Map<String, Map<String, Integer>> often = new TreeMap<>();
        before.forEach(
                f -> often.computeIfAbsent(f.column(), c -> new TreeMap<>()).merge(f.id(), 1, Integer::sum));
        now.forEach(f -> often.getOrDefault(f.column(), new TreeMap<>()).merge(f.id(), -1, Integer::sum));
        Map<String, List<String>> gone = new LinkedHashMap<>();
        often.forEach((column, ids) -> {
            Set<String> less = new TreeSet<>();
            ids.forEach((id, more) -> {
                if (more > 0) {
                    less.add(id);
                }
            });
            if (!less.isEmpty()) {
                gone.put(column, List.copyOf(less));
            }
        });
        return gone;
    }

    private static List<Found> ids(List<WrittenCell> cells) {
        List<Found> found = new ArrayList<>();
        for (WrittenCell cell : cells) {
            boolean holds =
                    cell.row().equals(WrittenCell.HEAD) ? HEAD.contains(cell.cell()) : !TEXT.contains(cell.cell());
            if (holds) {
                String file = cell.folder() + "/" + Path.of(cell.file()).getFileName();
                BETWEEN.splitAsStream(cell.value())
                        .filter(word -> ID.matcher(word).matches())
                        .forEach(id -> found.add(new Found(file + " " + cell.cell(), id, cell)));
            }
        }
        return found;
    }
}
