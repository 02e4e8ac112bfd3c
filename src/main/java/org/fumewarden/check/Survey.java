package org.fumewarden.check;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.fumewarden.advice.Advisor;
import org.fumewarden.codes.CodeBook;
import org.fumewarden.codes.DatedRow;
import org.fumewarden.codes.RuleFolder;
import org.fumewarden.codes.TableFile;
import org.fumewarden.codes.Vocabulary;
import org.fumewarden.engine.RuleBase;
import org.fumewarden.model.ClauseFor;
import org.fumewarden.model.Figure;
import org.fumewarden.model.Hazard;
import org.fumewarden.model.Lever;
import org.fumewarden.model.QuantityRange;
import org.fumewarden.model.Row;
import org.fumewarden.model.Term;
import org.fumewarden.task.TaskReader;
import org.fumewarden.task.TaskTree;

/** What is not wrong, but worth a look: rows nobody reads, rows that ended, figures that a code lacks, work for which nothing is concluded. */
public final class Survey {
    private static final String PROCESS = "process";
    private static final String METAL = "base-metal";

    private final RuleFolder folder;
    private final Function<String, RuleBase> bases;
    private final LocalDate today;

    /**
     * A survey of a rule base.
     *
     * @param today decides which rows have ended
     */
    public Survey(RuleFolder folder, Function<String, RuleBase> bases, LocalDate today) {
        this.folder = folder;
        this.bases = bases;
        this.today = today;
    }

    /** Every finding with its file and line, then the counts. */
    public List<String> lines(Path scenarios) {
        Set<String> read = new ScenarioRunner(bases)
                .runAll(scenarios).stream()
                        .flatMap(run -> run.shown().stream())
                        .flatMap(shown -> shown.read().values().stream())
                        .flatMap(Set::stream)
                        .collect(Collectors.toCollection(TreeSet::new));
        Map<String, String> unread = new TreeMap<>();
        Map<String, String> ended = new TreeMap<>();
        List<String> silent = new ArrayList<>();
        List<String> open = new ArrayList<>();
        List<String> counts = new ArrayList<>();
        int rows = 0;
        int pairs = 0;
        Set<String> seen = new TreeSet<>();
        for (String code : folder.codes()) {
            CodeBook book = bases.apply(code).book();
            for (TableFile table : book.tables()) {
                if (seen.add(table.file())) {
                    rows += (int)
                            table.rows().stream().filter(r -> decides(r.row())).count();
                    table.rows().forEach(row -> look(table, row, read, unread, ended));
                }
            }
            Gaps gaps = new Gaps(book, today);
            open.addAll(gaps.lines());
            counts.addAll(gaps.counts());
            pairs += work(code, silent);
        }
        List<String> lines = new ArrayList<>();
        unread.forEach((place, address) -> lines.add(place + " " + address + " is read in no scenario."));
        ended.forEach((place, words) -> lines.add(place + " " + words));
        lines.addAll(open);
        lines.addAll(silent);
        lines.add("rows " + unread.size() + " unread of " + rows);
        lines.add("rows " + ended.size() + " ended without a successor on " + today);
        lines.add("work " + silent.size() + " without an agent of " + pairs + " pairs of process and metal");
        lines.addAll(counts);
        return lines;
    }

    private void look(
            TableFile table, DatedRow row, Set<String> read, Map<String, String> unread, Map<String, String> ended) {
        String address = row.row().ref().address();
        String place = table.file() + ":" + row.line();
        if (decides(row.row()) && !read.contains(address)) {
            unread.merge(place, address, (a, b) -> a + ", " + b);
        }
        boolean followed = table.rows().stream()
                .anyMatch(r ->
                        r.row().ref().address().equals(address) && r.until().isAfter(today));
        if (!row.until().isAfter(today) && !followed) {
            ended.put(place, address + " ended on " + row.until() + " and no row follows it.");
        }
    }

    /** Words, clauses, levers and figures of estimates are read elsewhere and never become the premise of a rule. */
    private static boolean decides(Row row) {
        return !(row instanceof Term
                || row instanceof ClauseFor
                || row instanceof Figure
                || row instanceof Lever
                || row instanceof QuantityRange);
    }

    /** Tries every process on every metal, and says for which no agent is concluded. */
    private int work(String code, List<String> silent) {
        RuleBase base = bases.apply(code);
        Advisor advisor = new Advisor(base);
        Vocabulary words = base.book().vocabulary();
        int pairs = 0;
        for (String process : choices(words, PROCESS)) {
            for (String metal : choices(words, METAL)) {
                pairs++;
                String task = "{title: survey, code: " + code + ", on: " + today + ", task: {" + PROCESS + ": "
                        + process + ", " + METAL + ": " + metal + "}}";
                boolean concluded = !advisor.advise(
                                new TaskReader(words).read(TaskTree.parse("survey", task), code, Optional.empty()))
                        .trail()
                        .all(Hazard.class)
                        .isEmpty();
                if (!concluded) {
                    silent.add(code + ": " + process + " on " + metal + " gives off nothing that a row names.");
                }
            }
        }
        return pairs;
    }

    private static Set<String> choices(Vocabulary words, String question) {
        return words.question(question).map(q -> words.choices(q).keySet()).orElse(Set.of());
    }
}
