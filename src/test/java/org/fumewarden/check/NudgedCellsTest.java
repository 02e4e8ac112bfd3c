package org.fumewarden.check;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.fumewarden.Extent;
import org.fumewarden.codes.RuleFolder;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Each number of the tables, made one more and one less in its last digit, and each interval, made one unit longer and
 * shorter, differs from the value typed apart from the table, or
 * breaks a scenario, or is listed with a reason. A rank is moved past its neighbour. The gate compares with what is typed alone;
 * {@code mvn verify -Psoundness} tries the scenarios too.
 */
final class NudgedCellsTest {
    private static final Path LISTED = Path.of("docs/nudged.txt");
    private static final Path FOUND = Path.of("target/nudged.txt");
    private static final int SAMPLE = Extent.of(0, 8, Extent.ALL);

    private final List<TableCell> numbers = TableCell.all(RuleFolder.shipped()).stream()
            .filter(cell -> cell.isNumber() || cell.isInterval())
            .toList();
    private final ShippedValues typed = new ShippedValues();

    @Test
    void everyNudgedNumberIsNoticedOrListed(@TempDir Path folder) throws IOException {
        Map<String, String> listed = listed();
        List<TableCell> apart = numbers.stream().filter(typed::holds).toList();
        Set<String> survivors = new TreeSet<>();
        apart.stream()
                .filter(c -> nudges(c).stream().anyMatch(n -> typed.differs(n).isEmpty()))
                .forEach(c -> survivors.add(c.key()));
        List<TableCell> rest = numbers.stream().filter(c -> !typed.holds(c)).toList();
        boolean whole = SAMPLE >= rest.size();
        List<TableCell> tried = whole
                ? rest
                : Extent.sample(
                        rest.stream()
                                .filter(c -> !listed.containsKey(c.key()) && !listed.containsKey(anyRow(c)))
                                .toList(),
                        TableCell::key,
                        SAMPLE);
        NudgedTables tables = new NudgedTables(folder);
        for (TableCell cell : tried) {
            if (!nudges(cell).stream().allMatch(n -> tables.breaks(cell, n))) {
                survivors.add(cell.key());
            }
        }
        Files.createDirectories(FOUND.getParent());
        Files.write(FOUND, survivors);
        System.out.println("numbers and intervals of the tables " + numbers.size() + ": typed apart " + apart.size()
                + ", of the other "
                + rest.size() + " tried against scenarios " + tried.size() + ", seed " + Extent.SEED + ": noticed "
                + (apart.size() + tried.size() - survivors.size()) + ", not noticed " + survivors.size()
                + "; lines of the list "
                + listed.size());
        Set<String> news = survivors.stream()
                .filter(s -> !listed.containsKey(s) && !listed.containsKey(anyRow(s)))
                .collect(Collectors.toCollection(TreeSet::new));
        assertEquals(
                Set.of(),
                news,
                "nobody notices these; type them from their source, add a scenario, or list the reason");
        if (whole) {
            Set<String> idle = new TreeSet<>(listed.keySet());
            survivors.forEach(s -> idle.removeAll(List.of(s, anyRow(s))));
            assertEquals(Set.of(), idle, "these are noticed now; delete their lines from " + LISTED);
        }
    }

    private List<TableCell> nudges(TableCell cell) {
        if (cell.isInterval()) {
            return cell.nudgedIntervals();
        }
        if (!cell.cell().equals("order")) {
            return List.of(cell.nudged(1), cell.nudged(-1));
        }
        List<TableCell> ranks = numbers.stream()
                .filter(c -> c.cell().equals("order") && c.table().equals(cell.table()))
                .sorted(Comparator.comparing(TableCell::number))
                .toList();
        int at = ranks.indexOf(cell);
        List<TableCell> past = new ArrayList<>();
        if (at + 1 < ranks.size()) {
            past.add(behind(cell, ranks.get(at + 1)));
        }
        return past;
    }

    /** Behind the next in rank, which the row of the copy names so that its scenarios are tried too. */
    private static TableCell behind(TableCell cell, TableCell next) {
        TableCell moved = cell.with(next.nudged(1).number());
        return new TableCell(
                moved.file(),
                moved.table(),
                moved.kind(),
                next.row(),
                moved.cell(),
                moved.value(),
                moved.line(),
                moved.start());
    }

    private static String anyRow(TableCell cell) {
        return anyRow(cell.key());
    }

    private static String anyRow(String key) {
        String[] parts = key.split(" / ");
        return parts[0] + " / * / " + parts[parts.length - 1];
    }

    private static Map<String, String> listed() throws IOException {
        return Files.readAllLines(LISTED).stream()
                .filter(l -> !l.isBlank() && !l.startsWith("#"))
                .map(l -> l.split(": ", 2))
                .collect(Collectors.toMap(l -> l[0], l -> l[1], (a, b) -> a, TreeMap::new));
    }
}
