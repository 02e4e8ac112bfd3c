package org.fumewarden.check;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.fumewarden.codes.CodeBook;
import org.fumewarden.codes.DatedRow;
import org.fumewarden.codes.TableFile;
import org.fumewarden.engine.RuleBase;
import org.fumewarden.engine.RuleCard;
import org.fumewarden.engine.RuleInWords;
import org.fumewarden.model.Citation;
import org.fumewarden.model.Confidence;
import org.fumewarden.trail.Step;

/** The rules of all codes, how well each value is known, and what the scenarios show of each rule. */
public final class Catalogue {
    private final Map<String, RuleCard> cards = new TreeMap<>();
    private final Map<String, RuleInWords> inWords = new TreeMap<>();
    private final Map<String, CodeBook> books = new TreeMap<>();

    /** Reads the rules of some codes; a shared rule is in the words of the first, whatever code is added behind it. */
    public Catalogue(List<String> codes, Function<String, RuleBase> bases) {
        for (String code : codes) {
            RuleBase base = bases.apply(code);
            books.put(code, base.book());
            base.cards().forEach(cards::putIfAbsent);
            base.inWords().forEach(inWords::putIfAbsent);
        }
    }

    /** What each rule asks, in words, by its id. */
    public Map<String, RuleInWords> inWords() {
        return inWords;
    }

    /** Every rule by id. */
    public Map<String, RuleCard> cards() {
        return cards;
    }

    /**
     * What the scenarios show of a rule.
     *
     * @param scenarios files in which it fires
     * @param rows the table rows it read there, address and words
     */
    public record Use(Set<String> scenarios, Set<String> rows) {}

    /** Runs the scenarios below a folder and gathers what they show of a rule. */
    public Use use(String rule, Function<String, RuleBase> bases, Path folder) {
        Use use = new Use(new TreeSet<>(), new TreeSet<>());
        ScenarioRunner runner = new ScenarioRunner(bases);
        for (Path file : Scenario.files(folder)) {
            List<Step> steps = runner.advice(file).stream()
                    .flatMap(a -> a.trail().steps().stream())
                    .filter(s -> s.rule().equals(rule))
                    .toList();
            if (!steps.isEmpty()) {
                use.scenarios().add(file.toString());
            }
            steps.stream()
                    .flatMap(s -> s.premises().stream())
                    .filter(p -> p.kind().equals("row"))
                    .map(p -> p.address() + ": " + p.words())
                    .forEach(use.rows()::add);
        }
        return use;
    }

    /** How many rules and rows of a folder of rules stand on each confidence. */
    public Map<Confidence, Integer> counts(String folder) {
        Map<Confidence, Integer> counts = new EnumMap<>(Confidence.class);
        for (Confidence confidence : Confidence.values()) {
            counts.put(confidence, 0);
        }
        Stream.concat(rules(folder).map(RuleCard::citation), rows(folder).map(p -> citation(p.row())))
                .forEach(c -> counts.merge(c.confidence(), 1, Integer::sum));
        return counts;
    }

    /** One line for every rule and row that still needs its primary text: where it stands and what would prove it. */
    public List<String> unverified(String folder) {
        List<String> lines = new ArrayList<>();
        rules(folder)
                .filter(c -> c.citation().confidence().unverified())
                .forEach(c -> lines.add(c.id() + ": " + c.title() + " (" + words(c.citation()) + ")"));
        rows(folder)
                .filter(p -> citation(p.row()).confidence().unverified())
                .forEach(p -> lines.add(p.table().file() + ":" + p.row().line() + " "
                        + p.row().row().ref().address() + " (" + words(citation(p.row())) + ")"));
        return lines.stream().distinct().toList();
    }

    /** One line for every check of a row by a reviewer: the row, how well it is known now, who, when, against what. */
    public List<String> affirmed(String folder) {
        return rows(folder)
                .flatMap(p -> p.row().affirmations().stream()
                        .map(a -> p.table().file() + ":" + p.row().line() + " "
                                + p.row().row().ref().address() + " "
                                + citation(p.row()).confidence().key() + ", affirmed by " + a.words()))
                .distinct()
                .toList();
    }

    /** The folders of rules: the shared one, each code, and those that codes borrow. */
    public Set<String> folders() {
        return books.values().stream()
                .flatMap(b -> b.folders().stream())
                .collect(Collectors.toCollection(TreeSet::new));
    }

    private Stream<RuleCard> rules(String folder) {
        return cards.values().stream().filter(c -> c.code().equals(folder));
    }

    private record Placed(TableFile table, DatedRow row) {}

    /** The rows of a folder's own tables, read under any code that uses the folder. */
    private Stream<Placed> rows(String folder) {
        CodeBook book = books.values().stream()
                .filter(b -> b.folders().contains(folder))
                .findFirst()
                .orElseThrow();
        return book.tables().stream()
                .filter(t -> t.file().contains("/" + folder + "/tables/"))
                .flatMap(t -> t.rows().stream().map(r -> new Placed(t, r)));
    }

    private static Citation citation(DatedRow row) {
        return row.row().ref().citation();
    }

    private static String words(Citation citation) {
        return citation.source() + ", " + citation.clause();
    }
}
