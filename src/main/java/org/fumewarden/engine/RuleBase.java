package org.fumewarden.engine;

import java.time.LocalDate;
import java.util.Collections;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableSet;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.concurrent.CancellationException;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.Future;
import java.util.concurrent.FutureTask;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.fumewarden.codes.CodeBook;
import org.fumewarden.codes.CodeSummary;
import org.fumewarden.codes.RuleFolder;
import org.fumewarden.codes.Tongue;
import org.fumewarden.model.Kept;
import org.fumewarden.model.Row;

/** The compiled rules and the tables of one code. Immutable to its users and safe to share between threads. */
public final class RuleBase {
    private static final int DAYS_KEPT = 25;
    private static final Map<String, RuleBase> SHIPPED = new ConcurrentHashMap<>();

    private final CodeBook book;
    private final Map<Phase, Future<PhaseRules>> rules;
    private final Sentences sentences;
    private final SortedMap<String, String> edited;
    private final Kept<LocalDate, RowsInForce> rows = new Kept<>(DAYS_KEPT);
    /** The days on which rules begin and end, once they were asked for. */
    private volatile NavigableSet<LocalDate> changes;

    private RuleBase(CodeBook book, Map<Phase, ? extends Future<PhaseRules>> rules) {
        this(book, new EnumMap<>(rules), new Sentences(book.vocabulary()), Collections.emptySortedMap());
    }

    private RuleBase(
            CodeBook book,
            Map<Phase, Future<PhaseRules>> rules,
            Sentences sentences,
            SortedMap<String, String> edited) {
        this.book = book;
        this.edited = edited;
        this.rules = rules;
        this.sentences = sentences;
    }

    /**
     * The same rules and tables, speaking another language.
     *
     * @param names of the ids of the vocabulary in that language
     */
    public RuleBase speaking(Tongue tongue, Map<String, String> names) {
        CodeBook spoken = book.named(names);
        Map<String, String> words = new HashMap<>(tongue.words());
        names.forEach((id, own) -> words.putIfAbsent(book.vocabulary().name(id), own));
        return new RuleBase(
                spoken,
                rules,
                new Sentences(
                        spoken.vocabulary(),
                        new Tongue(tongue.language(), tongue.complete(), tongue.sentences(), words)),
                edited);
    }

    /** The same rules and tables with the names that ids have on a day. */
    public RuleBase on(LocalDate day) {
        CodeBook then = book.on(day);
        return then.equals(book) ? this : new RuleBase(then, rules, sentences.naming(then.vocabulary()), edited);
    }

    /** The rule base that ships with the program, loaded once. Its rules load on, phase by phase, while it is in use. */
    public static RuleBase shipped(String code) {
        return SHIPPED.computeIfAbsent(code, RuleBase::load);
    }

    private static RuleBase load(String code) {
        RuleFolder folder = RuleFolder.shipped();
        Map<Phase, FutureTask<PhaseRules>> rules = new EnumMap<>(Phase.class);
        ShippedRules.classes(CodeBook.folders(folder, code))
                .forEach((phase, classes) -> rules.put(
                        phase, new FutureTask<>(() -> ShippedRules.load(phase, ShippedRules.models(classes)))));
        Thread loader = new Thread(() -> rules.values().forEach(FutureTask::run), "rules of " + code);
        loader.setDaemon(true);
        loader.start();
        return new RuleBase(CodeBook.read(folder, code), rules);
    }

    /** A rule base of a folder; files of rules that differ from those of the program are compiled now. */
    public static RuleBase compiled(RuleFolder folder, String code) {
        CodeBook book = CodeBook.read(folder, code);
        RuleBase base = of(book, CompiledRules.load(folder, book.folders()));
        return new RuleBase(book, base.rules, base.sentences, EditedRuleTexts.in(folder, book.folders()));
    }

    /** By id, what the program has in the place of the rules that somebody changed, added or deleted; empty for its own. */
    public SortedMap<String, String> edited() {
        return edited;
    }

    /** A rule base of tables and rules that are there. */
    static RuleBase of(CodeBook book, Map<Phase, PhaseRules> rules) {
        Map<Phase, Future<PhaseRules>> loaded = new EnumMap<>(Phase.class);
        rules.forEach((phase, of) -> loaded.put(phase, CompletableFuture.completedFuture(of)));
        return new RuleBase(book, loaded);
    }

    public CodeBook book() {
        return book;
    }

    /** The phases that have rules, in their order. */
    Set<Phase> phases() {
        return rules.keySet();
    }

    /** The rules of a phase; waits until they are there. */
    PhaseRules rules(Phase phase) {
        try {
            return rules.get(phase).get();
        } catch (ExecutionException e) {
            throw new IllegalStateException("the compiled rules cannot be loaded", e.getCause());
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new CancellationException("The loading of the rules was stopped.");
        }
    }

    /** The rows in force on a day, in the order of tables and rows. */
    public List<Row> rowsOn(LocalDate day) {
        return rows(day).all();
    }

    /** The rows in force on a day, with what the engine knows of them. */
    RowsInForce rows(LocalDate day) {
        return rows.of(day, d -> new RowsInForce(book.rows(d), book));
    }

    /** Words for facts in the vocabulary of the code. */
    Sentences sentences() {
        return sentences;
    }

    /** What each rule asks, in words, by its id. */
    public Map<String, RuleInWords> inWords() {
        AbsenceWords words = new AbsenceWords(book.vocabulary(), UnaryOperator.identity(), book.vocabulary()::name);
        Map<String, RuleInWords> rules = new TreeMap<>();
        for (Phase phase : phases()) {
            PhaseRules of = rules(phase);
            of.base().getKiePackages().forEach(p -> p.getRules()
                    .forEach(rule ->
                            rules.put(of.spoken().get(rule.getName()).card().id(), RuleInWords.of(rule, words))));
        }
        return rules;
    }

    /** The days on which a rule begins or ends. */
    public NavigableSet<LocalDate> days() {
        if (changes == null) {
            changes = cards().values().stream()
                    .flatMap(card -> Stream.of(card.from(), card.until()))
                    .filter(d -> d.isAfter(LocalDate.EPOCH) && d.isBefore(CodeSummary.NEVER))
                    .collect(Collectors.toCollection(TreeSet::new));
        }
        return changes;
    }

    /** Every rule by id. */
    public Map<String, RuleCard> cards() {
        Map<String, RuleCard> cards = new TreeMap<>();
        for (Phase phase : phases()) {
            rules(phase)
                    .spoken()
                    .values()
                    .forEach(rule -> cards.put(rule.card().id(), rule.card().withEdition(book::edition)));
        }
        return cards;
    }
}
