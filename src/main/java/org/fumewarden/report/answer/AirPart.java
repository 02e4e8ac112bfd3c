package org.fumewarden.report.answer;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.fumewarden.advice.AccountLine;
import org.fumewarden.advice.Advice;
import org.fumewarden.model.Account;
import org.fumewarden.model.Need;
import org.fumewarden.model.NoLimit;
import org.fumewarden.model.Settlement;
import org.fumewarden.report.sheet.Line;
import org.fumewarden.report.sheet.Part;
import org.fumewarden.report.sheet.Sign;
import org.fumewarden.trail.Step;

/** What is in the air: how each hazard is settled, the highest hazard ratio first. What is open stands with the questions. */
record AirPart(Advice advice, Spoken spoken) {
    private static final BigDecimal TENTH = new BigDecimal("0.1");
    private static final Set<Settlement> BY_FIGURES =
            Set.of(Settlement.COMPARED, Settlement.BENCHMARKED, Settlement.ESTIMATED, Settlement.JUDGED);

    Optional<Part> write() {
        List<List<String>> rows = new ArrayList<>();
        floors().forEach(rows::add);
        advice.accounts().stream().filter(this::matters).map(this::row).forEach(rows::add);
        List<Line> lines = new ArrayList<>();
        if (!rows.isEmpty()) {
            List<String> heads = List.of("agent", "averaging", "exposure", "limit", "ratio", "known").stream()
                    .map(h -> spoken.say("air." + h))
                    .toList();
            lines.add(new Line.Table(heads, rows, List.of(2, 3, 4)));
        }
        told("air.small", l -> byFigures(l.account()) && !matters(l), lines);
        told("air.judged", l -> l.account().kind() == Settlement.JUDGED && !byFigures(l.account()), lines);
        told(
                "air.bounded",
                l -> Set.of(Settlement.FLOORED, Settlement.BOUNDED)
                        .contains(l.account().kind()),
                lines);
        Set<String> compared = advice.accounts().stream()
                .map(AccountLine::account)
                .filter(AirPart::byFigures)
                .map(Account::agent)
                .collect(Collectors.toSet());
        String without = advice.trail().all(NoLimit.class).stream()
                .filter(n -> !compared.contains(n.agent()))
                .map(n -> spoken.agent(n.agent()))
                .distinct()
                .collect(Collectors.joining("; "));
        if (!without.isEmpty()) {
            lines.add(new Line.Says(Sign.NONE, spoken.say("air.no-limit", without)));
        }
        return lines.isEmpty() ? Optional.empty() : Optional.of(new Part("air", spoken.say("page.air"), lines));
    }

    private static boolean byFigures(Account account) {
        return BY_FIGURES.contains(account.kind()) && account.factor().isPresent();
    }

    private boolean matters(AccountLine line) {
        return byFigures(line.account()) && line.account().factor().get().compareTo(TENTH) >= 0;
    }

    /** Accounts that take no row of their own: their agents, each once. */
    private void told(String key, Predicate<AccountLine> which, List<Line> lines) {
        String names = advice.accounts().stream()
                .filter(which)
                .map(l -> spoken.agent(l.account().agent()))
                .distinct()
                .collect(Collectors.joining("; "));
        if (!names.isEmpty()) {
            lines.add(new Line.Says(Sign.NONE, spoken.say(key, names)));
        }
    }

    /** Least factors that hold whatever was measured, and sums of like effect. */
    private List<List<String>> floors() {
        return advice.trail()
                .concluding(Need.class)
                .filter(s -> Set.of("floor", "mixture").contains(((Need) s.conclusion()).basis()))
                .map(s -> floor(s, (Need) s.conclusion()))
                .distinct()
                .toList();
    }

    private List<String> floor(Step step, Need need) {
        return List.of(
                Spoken.sentenceCase(spoken.agent(need.subject())),
                "",
                "",
                "",
                Spoken.figure(need.value()),
                spoken.say("air.basis." + need.basis()));
    }

    private List<String> row(AccountLine line) {
        Account account = line.account();
        return List.of(
                Spoken.sentenceCase(spoken.agent(account.agent())),
                account.averaging().equals("any") ? "" : spoken.say("open." + account.averaging()),
                account.level().map(Spoken::level).orElse("") + " " + account.unit(),
                account.against().map(Spoken::level).orElse(""),
                account.factor().map(Spoken::figure).orElse(""),
                spoken.say("air.kind." + account.kind().key()));
    }
}
