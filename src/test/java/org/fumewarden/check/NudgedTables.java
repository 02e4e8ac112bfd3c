package org.fumewarden.check;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.HashMap;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.fumewarden.codes.CodeBook;
import org.fumewarden.codes.InputException;
import org.fumewarden.codes.RuleFolder;
import org.fumewarden.engine.MutatedRules;
import org.fumewarden.engine.RuleBase;

/** A copy of the rule base in which one number at a time is another, and the scenarios that may notice. */
final class NudgedTables {
    private final Path folder;

    /** Copies the shipped rule base into a folder. */
    NudgedTables(Path folder) throws IOException {
        this.folder = folder;
        for (var file : RuleFolder.shipped().files().entrySet()) {
            Path copy = folder.resolve(file.getKey());
            Files.createDirectories(copy.getParent());
            Files.write(copy, file.getValue());
        }
    }

    /** True when a scenario is no longer as expected, or the table is refused. */
    boolean breaks(TableCell was, TableCell becomes) {
        Path file = folder.resolve(was.file());
        try {
            String text = Files.readString(file);
            Files.writeString(
                    file,
                    text.substring(0, was.start())
                            + becomes.value()
                            + text.substring(was.start() + was.value().length()));
            try {
                return noticed(was, becomes);
            } finally {
                Files.writeString(file, text);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private boolean noticed(TableCell was, TableCell becomes) {
        RuleFolder changed = RuleFolder.at(folder);
        Map<String, RuleBase> nudged = new HashMap<>();
        ScenarioRunner runner = new ScenarioRunner(code ->
                nudged.computeIfAbsent(code, c -> MutatedRules.over(RuleBase.shipped(c), CodeBook.read(changed, c))));
        try {
            return readers(was, becomes)
                    .anyMatch(run -> !runner.run(run.file()).problems().isEmpty());
        } catch (InputException refused) {
            return true;
        }
    }

    /** Those in which the row is a premise, and those in which a rule that reads it is silent: a near miss. */
    private Stream<ScenarioRun> readers(TableCell was, TableCell becomes) {
        if (was.cell().equals("order")) {
            Set<String> both = Set.of(device(was), device(becomes));
            return ShippedRuns.all().stream().filter(run -> run.shown().orElseThrow().recommended().stream()
                    .anyMatch(both::contains));
        }
        Set<String> addresses = addresses(was);
        Predicate<ScenarioRun> reads = run -> run.shown().orElseThrow().read().values().stream()
                .anyMatch(rows -> !Collections.disjoint(rows, addresses));
        Set<String> rules = ShippedRuns.all().stream()
                .filter(reads)
                .flatMap(run -> run.shown().orElseThrow().read().entrySet().stream())
                .filter(e -> !Collections.disjoint(e.getValue(), addresses))
                .map(Map.Entry::getKey)
                .collect(Collectors.toCollection(TreeSet::new));
        return Stream.concat(
                ShippedRuns.all().stream().filter(reads),
                ShippedRuns.all().stream().filter(run -> run.silent().stream().anyMatch(rules::contains)));
    }

    private static String device(TableCell cell) {
        return cell.row().split(" ")[0];
    }

    private Set<String> addresses(TableCell cell) {
        Set<String> found = new TreeSet<>();
        for (String code : RuleFolder.shipped().codes()) {
            RuleBase.shipped(code).book().tables().stream()
                    .filter(t -> t.id().equals(cell.table()))
                    .flatMap(t -> t.rows().stream())
                    .filter(r -> r.line() == cell.line())
                    .forEach(r -> found.add(r.row().ref().address()));
        }
        return found;
    }
}
