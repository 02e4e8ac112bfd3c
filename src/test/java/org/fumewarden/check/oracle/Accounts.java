package org.fumewarden.check.oracle;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.fumewarden.advice.AccountLine;
import org.fumewarden.advice.Advice;
import org.fumewarden.advice.Status;
import org.fumewarden.model.Account;
import org.fumewarden.model.Averaging;
import org.fumewarden.model.Benchmark;
import org.fumewarden.model.Exposure;
import org.fumewarden.model.Judged;
import org.fumewarden.model.Limit;
import org.fumewarden.model.PublishedHigh;
import org.fumewarden.model.Settlement;
import org.fumewarden.model.Threshold;

/**
 * Each hazard for each averaging time that has a limit ends in one account, and each account is what it claims to be. Not known
 * here: limits that long shifts or excursion factors make, so a level may be held against less than its limit; estimates,
 * of which random tasks hold none; whether a code accepts a judgement.
 */
record Accounts(Case facts, Levels levels, Floors floors) implements Family {
    /** The stricter of what may be said of a peak by an average: NIOSH 77-173, from memory. */
    private static final BigDecimal PEAK = BigDecimal.TEN;

    @Override
    public List<String> objections(Advice advice) {
        List<String> found = new ArrayList<>();
        List<Account> accounts =
                advice.accounts().stream().map(AccountLine::account).toList();
        Map<String, List<Account>> settled = accounts.stream()
                .collect(
                        Collectors.groupingBy(a -> a.agent() + " " + a.averaging(), TreeMap::new, Collectors.toList()));
        settled.values().stream()
                .filter(list -> list.size() > 1)
                .forEach(list -> found.add("more than one account: " + list));
        for (String agent : facts.principalAgents()) {
            if (accounts.stream().noneMatch(a -> a.agent().equals(agent))) {
                found.add("no account of " + agent);
            }
            levels.yardsticks(agent).stream()
                    .map(l -> l.averaging().key())
                    .filter(key -> !settled.containsKey(agent + " " + key) && !settled.containsKey(agent + " any"))
                    .forEach(key -> found.add("no account of " + agent + " " + key));
        }
        for (Levels.Compared compared : levels.compared()) {
            String key = compared.agent() + " " + compared.averaging().key();
            if (settled.getOrDefault(key, List.of()).stream().noneMatch(a -> tells(a, compared))) {
                found.add("no account tells of " + compared);
            }
        }
        BigDecimal worn = advice.requiredFactor().value().max(BigDecimal.ONE);
        accounts.forEach(a -> wrong(a, worn).ifPresent(why -> found.add(why + ": " + a)));
        if (advice.status() == Status.COMPLETE && accounts.stream().anyMatch(Account::open)) {
            found.add("complete with an open account");
        }
        if (advice.status() == Status.COMPLETE
                && (accounts.isEmpty() || advice.requiredFactor().open())) {
            found.add("complete with nothing settled");
        }
        return found;
    }

    /** True when the account holds the level against this limit, or against a stricter one. */
    private static boolean tells(Account account, Levels.Compared compared) {
        return Set.of(Settlement.COMPARED, Settlement.BORROWED, Settlement.BENCHMARKED)
                        .contains(account.kind())
                && account.level()
                                .orElseThrow()
                                .multiply(compared.limit())
                                .compareTo(compared.level()
                                        .multiply(account.against().orElseThrow()))
                        >= 0;
    }

    private Optional<String> wrong(Account account, BigDecimal worn) {
        boolean stated = facts.said(Exposure.class).stream()
                .anyMatch(x ->
                        x.agent().equals(account.agent()) && x.averaging().key().equals(account.averaging()));
        boolean right =
                switch (account.kind()) {
                    case COMPARED, BORROWED ->
                        stated && facts.tables().all(Limit.class).stream().anyMatch(l -> speaks(l, account));
                    case BENCHMARKED ->
                        stated
                                && (recommended(account)
                                        || facts.tables().all(Benchmark.class).stream()
                                                        .anyMatch(b -> speaks(b.asLimit(), account))
                                                && facts.tables().all(Limit.class).stream()
                                                        .noneMatch(l -> speaks(l, account)));
                    case ASSUMED -> !stated && (assumed(account) || ofTheWhole(account));
                    case JUDGED ->
                        !stated
                                && facts.said(Judged.class).stream()
                                        .anyMatch(j -> j.agent().equals(account.agent()));
                    case FLOORED -> !stated && (guided() || published(account) && within(account, worn));
                    case BOUNDED -> !stated && bounded(account, worn);
                    case ESTIMATED -> false;
                    case OPEN -> true;
                };
        return right ? Optional.empty() : Optional.of("not " + account.kind().key());
    }

    /** A short level against a recommended limit of short time that stands beside the law. */
    private boolean recommended(Account account) {
        return !account.averaging().equals(Averaging.TWA.key())
                && facts.tables().all(Benchmark.class).stream()
                        .anyMatch(b -> b.ref().table().equals("us-recommended-short")
                                && b.agent().equals(account.agent())
                                && b.value().compareTo(account.against().orElseThrow()) == 0);
    }

    /** Lead of 29 CFR 1926.62(d)(2), which the employer assumes until it was measured. */
    private boolean assumed(Account account) {
        return account.agent().equals("lead")
                && facts.tables().all(Threshold.class).stream().anyMatch(t -> t.id().startsWith("assumed-lead-"));
    }

    /** A fraction that nobody measured, at the stated level of the fraction that holds it. */
    private boolean ofTheWhole(Account account) {
        return facts.said(Exposure.class).stream()
                .filter(x -> facts.in("fraction-of-" + account.agent(), x.agent()))
                .anyMatch(x -> x.level().compareTo(account.level().orElseThrow()) == 0);
    }

    private static boolean speaks(Limit limit, Account account) {
        return limit.agent().equals(account.agent()) && limit.averaging().key().equals(account.averaging());
    }

    /** The British sheet WL3 is content with extraction that was examined and tested, or with what it says of light work. */
    private boolean guided() {
        return facts.is("extraction", "verified")
                && facts.number("welding-fume-floor").isPresent();
    }

    /** Little is given off of it, or what was stated bounds it within the limit times what is worn in any case. */
    private boolean bounded(Account account, BigDecimal worn) {
        if (account.by().equals(Account.MINOR)) {
            return !facts.principalAgents().contains(account.agent());
        }
        BigDecimal level = account.level().orElseThrow();
        return judgedWhole(account) && within(account, worn)
                || most(account).filter(m -> m.compareTo(level) <= 0).isPresent() && within(account, worn);
    }

    /** True when somebody judged the whole that it is a part of. */
    private boolean judgedWhole(Account account) {
        return facts.said(Judged.class).stream().anyMatch(j -> facts.in("part-of-" + j.agent(), account.agent()));
    }

    /** True when the level is within the limit times what is worn in any case, which holds no gas. */
    private boolean within(Account account, BigDecimal worn) {
        BigDecimal times = facts.gas(account.agent()) ? BigDecimal.ONE : worn;
        return levels.yardsticks(account.agent()).stream()
                .filter(l -> l.averaging().key().equals(account.averaging()))
                .allMatch(l -> account.level().orElseThrow().compareTo(l.value().multiply(times)) <= 0);
    }

    /** True when published samples of this process and place, of the agent or the fume it is part of, speak for no more. */
    private boolean published(Account account) {
        return facts.tables().all(PublishedHigh.class).stream()
                .filter(p -> p.agent().equals(account.agent()) || facts.in("part-of-" + p.agent(), account.agent()))
                .filter(p -> facts.is("process", p.process())
                        && p.speaksFor(
                                facts.answer("base-metal").orElse("unknown"),
                                facts.answer("place").orElse("unknown")))
                .anyMatch(p -> p.value().compareTo(account.level().orElseThrow()) <= 0);
    }

    /** The least that the stated levels allow: a part is at most its whole, an average at most its highest part. */
    private Optional<BigDecimal> most(Account account) {
        return facts.said(Exposure.class).stream()
                .filter(x -> x.agent().equals(account.agent())
                        || facts.in("part-of-" + x.agent(), account.agent())
                        || facts.in("fraction-of-" + x.agent(), account.agent()))
                .filter(x -> account.unit().equals(x.unit().symbol())
                        || facts.agent(x.agent()).molarMass().isPresent())
                .map(x -> inUnit(x, account).multiply(times(x.averaging(), account.averaging())))
                .min(BigDecimal::compareTo);
    }

    private BigDecimal inUnit(Exposure exposure, Account account) {
        return levels.yardsticks(account.agent()).stream()
                .filter(l -> l.unit().symbol().equals(account.unit()))
                .findFirst()
                .map(l -> facts.in(l.unit(), exposure))
                .orElse(exposure.level());
    }

    private static BigDecimal times(Averaging stated, String wanted) {
        boolean asShort = stated.key().equals(wanted) || stated == Averaging.CEILING || wanted.equals("twa");
        return asShort ? BigDecimal.ONE : PEAK;
    }
}
