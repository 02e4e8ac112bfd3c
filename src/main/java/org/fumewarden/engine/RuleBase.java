package org.fumewarden.engine;

import java.time.LocalDate;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import org.fumewarden.codes.CodeBook;
import org.fumewarden.codes.RuleFolder;
import org.fumewarden.model.Row;
import org.kie.api.KieBase;

/** The compiled rules and the tables of one code. Immutable and safe to share between threads. */
public final class RuleBase {
    private static final int DAYS_KEPT = 25;

    private final CodeBook book;
    private final Map<Phase, KieBase> rules;
    private final Map<String, RuleCard> cards;
    private final Map<String, SpokenRule> spoken = new HashMap<>();
    private final Sentences sentences;
    private final Map<Phase, ReadFacts> read = new EnumMap<>(Phase.class);
    private final Kept<LocalDate, RowsInForce> rows = new Kept<>(DAYS_KEPT);

    RuleBase(CodeBook book, Map<Phase, KieBase> rules) {
        this.book = book;
        this.rules = new EnumMap<>(rules);
        this.cards = new TreeMap<>();
        this.rules.forEach((phase, base) -> CardReader.cards(phase, base).forEach((name, card) -> {
            cards.put(card.id(), card);
            spoken.put(name, SpokenRule.of(card));
        }));
        this.sentences = new Sentences(book.vocabulary());
        this.rules.forEach((phase, base) -> read.put(phase, new ReadFacts(base)));
    }

    /** The rule base that ships with the program. */
    public static RuleBase shipped(String code) {
        RuleFolder folder = RuleFolder.shipped();
        List<String> folders = CodeBook.folders(folder, code);
        // Tables and rules load side by side: together they are most of the time of a short command.
        FutureTask<Map<Phase, KieBase>> rules = new FutureTask<>(() -> ShippedRules.load(folders));
        Thread loader = new Thread(rules, "rules of " + code);
        loader.setDaemon(true);
        loader.start();
        CodeBook book = CodeBook.read(folder, code);
        return new RuleBase(book, loaded(rules));
    }

    private static Map<Phase, KieBase> loaded(FutureTask<Map<Phase, KieBase>> rules) {
        try {
            return rules.get();
        } catch (ExecutionException e) {
            throw new IllegalStateException("the compiled rules cannot be loaded", e.getCause());
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new CancellationException("The loading of the rules was stopped.");
        }
    }

    /** A rule base compiled now from a folder. */
    public static RuleBase compiled(RuleFolder folder, String code) {
        CodeBook book = CodeBook.read(folder, code);
        return new RuleBase(book, CompiledRules.load(folder, book.folders()));
    }

    public CodeBook book() {
        return book;
    }

    Map<Phase, KieBase> rules() {
        return rules;
    }

    /** The rows in force on a day, in the order of tables and rows. */
    public List<Row> rowsOn(LocalDate day) {
        return rows(day).all();
    }

    /** The rows in force on a day, by the phases that read them. */
    RowsInForce rows(LocalDate day) {
        return rows.of(day, d -> new RowsInForce(book.rows(d), read));
    }

    /** What the rules of a phase can match. */
    ReadFacts read(Phase phase) {
        return read.get(phase);
    }

    /** Words for facts in the vocabulary of the code. */
    Sentences sentences() {
        return sentences;
    }

    /** Every rule by its whole name. */
    Map<String, SpokenRule> spoken() {
        return spoken;
    }

    /** Every rule by id. */
    public Map<String, RuleCard> cards() {
        return cards;
    }
}
