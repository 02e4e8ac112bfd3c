package org.fumewarden.advice;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.fumewarden.assessment.ExposureTables;
import org.fumewarden.codes.Vocabulary;
import org.fumewarden.model.Account;
import org.fumewarden.model.Benchmark;
import org.fumewarden.model.CountedAs;
import org.fumewarden.model.Hazard;
import org.fumewarden.model.Input;
import org.fumewarden.model.Limit;
import org.fumewarden.model.StatedLimit;
import org.fumewarden.trail.Step;
import org.fumewarden.trail.Trail;

/** Gathers how each hazard of a task is settled. */
final class AccountWriter {
    private final Vocabulary vocabulary;
    private final Trail trail;
    private final ExposureTables figures;
    private final Map<String, String> stated = new HashMap<>();

    AccountWriter(Vocabulary vocabulary, ExposureTables figures, Collection<Input> inputs, Trail trail) {
        this.vocabulary = vocabulary;
        this.trail = trail;
        this.figures = figures;
        for (Input input : inputs) {
            if (input instanceof StatedLimit limit) {
                stated.put(limit.path(), "stated limit: " + limit.from());
            }
        }
    }

    /**
     * One line for each account, the largest factor first, what is open before all.
     *
     * @throws IllegalStateException when a principal hazard has no account: a fault of the rules
     */
    List<AccountLine> write() {
        Map<Account, Step> accounts = new LinkedHashMap<>();
        trail.concluding(Account.class).forEach(s -> accounts.putIfAbsent((Account) s.conclusion(), s));
        Set<String> settled = accounts.keySet().stream().map(Account::agent).collect(Collectors.toSet());
        Set<String> without = trail.all(Hazard.class).stream()
                .filter(h -> h.rank().equals("principal"))
                .map(Hazard::agent)
                .filter(agent -> !settled.contains(agent))
                .collect(Collectors.toCollection(TreeSet::new));
        if (!without.isEmpty()) {
            throw new IllegalStateException("no rule settles the hazards " + without);
        }
        List<AccountLine> lines = new ArrayList<>();
        accounts.forEach((account, step) -> lines.add(new AccountLine(
                account, vocabulary.name(account.agent()), countedAs(account), heldAgainst(account), Reason.of(step))));
        lines.sort(Comparator.comparing((AccountLine l) -> !l.account().open())
                .thenComparing(l -> l.account().factor().isEmpty())
                .thenComparing(l -> l.account().factor().orElse(java.math.BigDecimal.ZERO), Comparator.reverseOrder())
                .thenComparing(l -> l.account().agent())
                .thenComparing(l -> l.account().averaging()));
        return List.copyOf(lines);
    }

    private String countedAs(Account account) {
        return figures.at(account.by())
                .map(row -> row instanceof Limit limit
                        ? limit.fraction()
                        : row instanceof Benchmark benchmark ? benchmark.fraction() : null)
                .map(words -> new CountedAs(words).beside(account.agent()))
                .filter(words -> !vocabulary.name(account.agent()).contains(words))
                .orElse("");
    }

    private String heldAgainst(Account account) {
        return switch (account.kind()) {
            case BORROWED -> "borrowed limit";
            case COMPARED, BENCHMARKED, ESTIMATED -> level(account.by()).orElse("limit");
            case ASSUMED -> level(account.by()).orElse("limit") + ", assumed until it is measured";
            case JUDGED -> level(account.by()).isPresent() ? "limit, by judgement" : "judgement of " + account.by();
            case FLOORED, BOUNDED -> "bounded by " + vocabulary.name(account.by());
            case OPEN -> "not settled";
        };
    }

    /** What kind of level stands at an address. */
    private Optional<String> level(String address) {
        return figures.at(address)
                .map(row -> row instanceof Limit ? "limit" : row instanceof Benchmark ? "benchmark, not law" : null)
                .or(() -> Optional.ofNullable(stated.get(address)));
    }
}
