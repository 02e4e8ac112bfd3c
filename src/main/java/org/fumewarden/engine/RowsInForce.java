package org.fumewarden.engine;

import java.util.BitSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import org.fumewarden.codes.CodeBook;
import org.fumewarden.model.AssignedFactor;
import org.fumewarden.model.Citation;
import org.fumewarden.model.ClauseFor;
import org.fumewarden.model.Conclusion;
import org.fumewarden.model.OfClass;
import org.fumewarden.model.Row;
import org.fumewarden.trail.Premise;

/** The rows in force on one day, and what is worth knowing of them once for all decisions of that day. */
final class RowsInForce {
    private final List<Row> all;
    private final Map<Phase, List<Row>> byPhase = new ConcurrentHashMap<>();
    private final Map<String, Citation> clauses = new HashMap<>();
    private final CodeBook book;
    private final Map<String, Premise> premises = new ConcurrentHashMap<>();

    /** The classes of respirator that have a factor. */
    private final Set<String> classes = new HashSet<>();

    RowsInForce(List<Row> all, CodeBook book) {
        this.all = List.copyOf(all);
        this.book = book;
        for (Row row : all) {
            if (row instanceof ClauseFor clause) {
                clauses.put(clause.rule(), clause.ref().citation());
            } else if (row instanceof AssignedFactor factor) {
                classes.add(factor.deviceClass());
            }
        }
    }

    /** The same rows with another in place of one, or without it. */
    RowsInForce with(Row row, Optional<Row> instead) {
        return new RowsInForce(row.replacedIn(all, instead), book);
    }

    /** In the order of tables and rows. */
    List<Row> all() {
        return all;
    }

    /** Those that the rules of a phase can match. */
    List<Row> readBy(PhaseRules rules) {
        return byPhase.computeIfAbsent(
                rules.phase(), phase -> all.stream().filter(rules.read()::some).toList());
    }

    /** Those that some rules of a phase can match. */
    List<Row> readBy(PhaseRules rules, BitSet some) {
        return some.cardinality() == rules.spoken().size()
                ? readBy(rules)
                : readBy(rules).stream()
                        .filter(row -> rules.read().of(row).rules().intersects(some))
                        .toList();
    }

    /** The patterns of a phase that rows match. */
    BitSet found(PhaseRules rules) {
        BitSet found = new BitSet();
        readBy(rules).forEach(row -> found.or(rules.read().of(row).found()));
        return found;
    }

    /**
     * False for what is concluded of a class of respirator without a factor in this code: such a class gets no verdict. A
     * new code has no factors at all, and all that its rules say is kept.
     */
    boolean judge(Conclusion conclusion) {
        return !(conclusion instanceof OfClass of) || classes.isEmpty() || classes.contains(of.deviceClass());
    }

    /** The clause of a rule: for a shared one that by which the code orders the same. */
    Citation citation(RuleCard card) {
        Citation own = clauses.get(card.id());
        return own != null ? own : card.cited(book::edition);
    }

    /** The clause of a rule, or where the organisation has the values from that a firing rests on, in its place. */
    Citation citation(RuleCard card, Set<Premise> given) {
        Citation clause = citation(card);
        return given.stream()
                .flatMap(premise -> premise.citation().stream())
                .filter(Citation::isOfOrganisation)
                .distinct()
                .reduce(Citation::and)
                .map(own -> own.insteadOf(clause.cited(book.titled(clause.source()), ", ")))
                .orElse(clause);
    }

    /** A row as a premise. */
    Premise premise(Row row, Sentences sentences) {
        return premises.computeIfAbsent(
                row.ref().address(),
                address -> new Premise(
                        "row",
                        address,
                        sentences.describe(row),
                        Optional.of(row.ref().citation())));
    }
}
