package org.fumewarden.report.answer;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.fumewarden.advice.AccountLine;
import org.fumewarden.advice.Advice;
import org.fumewarden.advice.Status;
import org.fumewarden.assessment.ReferencePeriod;
import org.fumewarden.model.Account;
import org.fumewarden.model.Averaging;
import org.fumewarden.model.Bound;
import org.fumewarden.model.Caution;
import org.fumewarden.model.Figures;
import org.fumewarden.model.NoLimit;
import org.fumewarden.model.NoneListed;
import org.fumewarden.model.NoneStated;
import org.fumewarden.model.Settlement;
import org.fumewarden.report.sheet.Line;
import org.fumewarden.report.sheet.Part;
import org.fumewarden.report.sheet.Sign;

/** What is in the air: how each hazard is settled, the highest hazard ratio first. What is open stands with the questions. */
record AirPart(Advice advice, Set<String> notLaw, Spoken spoken) {
    private static final String AVERAGE = Averaging.TWA.key();
    private static final List<String> COLUMNS =
            List.of("agent", "averaging", "exposure", "limit", "ratio", "known", "note");
    private static final int RATIO = 4;
    static final BigDecimal TENTH = new BigDecimal("0.1");
    private static final Set<Settlement> BOUNDED = Set.of(Settlement.FLOORED, Settlement.BOUNDED);
    private static final Set<Settlement> BY_FIGURES = EnumSet.range(Settlement.COMPARED, Settlement.ASSUMED);
    private static final Set<String> FOLDABLE =
            Set.of("air.judged", "air.few", "air.above-peak", "air.small", "air.bounded", "air.minor");
    private static final String APART = "like-effect-apart-";

    /** A row of the table with the hazard ratio by which it is ranked. */
    record Ranked(String agent, BigDecimal factor, List<String> cells) {}

    /** The part as it stands on the page. */
    Optional<Part> write() {
        return part(rows(ranked(advice.accounts().stream().filter(AirPart::matters), l -> "", false)), 0);
    }

    /** The part with one row for each agent, that of its highest ratio, and without so many remarks from the end. */
    Optional<Part> brief(int dropped) {
        return part(rows(highest()), dropped);
    }

    /**
     * The part without the remarks that the annex can take.
     *
     * @param inTable rows of the table, from the highest ratio down; the rest stands in one sentence below it
     */
    Optional<Part> listed(int inTable) {
        List<Ranked> ranked = highest();
        if (ranked.isEmpty()) {
            return brief(foldable());
        }
        List<Line> lines = new ArrayList<>(rows(ranked.subList(0, Math.min(inTable, ranked.size()))));
        List<String> rest = ranked.stream()
                .skip(inTable)
                .map(r -> r.agent() + time(r, ranked) + " " + r.cells().get(RATIO))
                .toList();
        if (!rest.isEmpty()) {
            lines.add(new Line.Says(Sign.NONE, spoken.say("air.also", String.join("; ", rest))));
        }
        return part(lines, foldable());
    }

    /** The averaging time of an agent that has several ratios. */
    private static String time(Ranked row, List<Ranked> all) {
        boolean alone = all.stream().filter(r -> r.agent().equals(row.agent())).count() == 1;
        return alone || row.cells().get(1).isEmpty() ? "" : " (" + row.cells().get(1) + ")";
    }

    /** How many rows the table has with one for each agent. */
    int agents() {
        return highest().size();
    }

    /** How many sentences below the table the annex can take: never those of an agent that has no limit here. */
    int foldable() {
        return (int)
                remarked().stream().filter(r -> FOLDABLE.contains(r.getKey())).count();
    }

    private List<Ranked> highest() {
        Set<String> met = new HashSet<>();
        return ranked(
                advice.accounts().stream()
                        .filter(AirPart::matters)
                        .filter(l -> met.add(l.account().agent())),
                l -> "",
                false);
    }

    /**
     * Every account that rests on figures, for the annex.
     *
     * @param places numbers of the notes that say where the value stands that a level was held against
     */
    List<Line> all(Function<AccountLine, String> places) {
        List<AccountLine> shown =
                advice.accounts().stream().filter(l -> byFigures(l.account())).toList();
        List<Line> lines = new ArrayList<>(rows(ranked(shown.stream(), places, true), COLUMNS));
        counted(shown).map(says -> new Line.Says(Sign.NONE, says)).ifPresent(lines::add);
        return lines;
    }

    private Optional<Part> part(List<Line> table, int dropped) {
        List<Line> lines = new ArrayList<>(table);
        List<Map.Entry<String, Set<String>>> remarks = remarked();
        int kept = remarks.size() - dropped;
        remarks.subList(0, kept).forEach(r -> {
            String names = r.getValue().stream().map(spoken::agent).collect(Collectors.joining("; "));
            lines.add(new Line.Says(Sign.NONE, spoken.say(r.getKey(), names)));
        });
        if (dropped > 0) {
            long agents = remarks.subList(kept, remarks.size()).stream()
                    .flatMap(r -> r.getValue().stream())
                    .distinct()
                    .count();
            lines.add(new Line.Says(Sign.NONE, spoken.say("page.more.air", agents)));
        }
        return lines.isEmpty() ? Optional.empty() : Optional.of(new Part("air", spoken.say("page.air"), lines));
    }

    private List<Ranked> ranked(Stream<AccountLine> shown, Function<AccountLine, String> places, boolean annex) {
        List<Ranked> ranked = new ArrayList<>(new UntoldRows(advice, spoken).ranked(annex));
        shown.forEach(l -> ranked.add(new Ranked(
                spoken.agent(l.account().agent()),
                l.account().factor().orElse(BigDecimal.ZERO),
                row(l, places.apply(l)))));
        // What decides stands first, whatever the page has room for.
        ranked.sort(Comparator.comparing(Ranked::factor).reversed());
        return ranked;
    }

    private List<Line> rows(List<Ranked> ranked) {
        return rows(ranked, COLUMNS.subList(0, COLUMNS.size() - 1));
    }

    private List<Line> rows(List<Ranked> ranked, List<String> columns) {
        if (ranked.isEmpty()) {
            return List.of();
        }
        List<String> heads = columns.stream()
                .map(h -> spoken.say(h.equals("limit") && advice.limitsAreLater() ? "air.limit.later" : "air." + h))
                .toList();
        List<List<String>> cells =
                ranked.stream().map(r -> r.cells().subList(0, columns.size())).toList();
        return List.of(new Line.Table(heads, cells, List.of(2, 3, RATIO)));
    }

    /** The agents that take no row, by what is said of them; what a reader must act on stands first. */
    private List<Map.Entry<String, Set<String>>> remarked() {
        Set<String> compared = agents(l -> byFigures(l.account()));
        Set<String> without = without(NoneListed.LIMITS, compared);
        Set<String> bounded = agents(l -> BOUNDED.contains(l.account().kind()));
        bounded.removeAll(without);
        bounded.removeAll(agents(AirPart::matters));
        new UntoldRows(advice, spoken).bounds(false).map(Bound::agent).forEach(bounded::remove);
        Set<String> searched = searched();
        bounded.removeAll(searched);
        Set<String> minor = agents(l -> l.account().by().equals(Account.MINOR));
        minor.retainAll(bounded);
        bounded.removeAll(minor);
        new UntoldRows(advice, spoken).floors().forEach(minor::remove);
        if (advice.status() == Status.DO_NOT_ENTER) {
            // Nothing is called low where nobody may start.
            minor.clear();
        }
        Set<String> small = agents(l -> byFigures(l.account()) && !matters(l));
        small.removeAll(agents(AirPart::matters));
        Set<String> judged = agents(l -> l.account().kind() == Settlement.JUDGED && !byFigures(l.account()));
        List.of(small, judged, agents(l -> l.account().open())).forEach(bounded::removeAll);
        Map<String, Set<String>> remarks = new LinkedHashMap<>();
        // One alone is no list of what might be added up.
        Set<String> apart = apart();
        remarks.put("air.apart", apart.size() > 1 ? apart : Set.of());
        Set<String> notHeld = without(NoneListed.NOT_HELD, compared);
        notHeld.removeAll(searched);
        remarks.put("air.not-held", notHeld);
        remarks.put(
                "air.members",
                without(NoneListed.OF_MEMBERS, agents(l -> l.account().kind().compareTo(Settlement.BORROWED) <= 0)));
        remarks.put("air.no-limit", without);
        remarks.put("air.sample-time", agents(l -> noted(l, "warn-sample-time")));
        remarks.put("air.below-action", agents(l -> matters(l) && noted(l, "below-action-level")));
        remarks.put(
                "air.over-8-h",
                agents(l -> l.account().averaging().equals(AVERAGE) && matters(l) && noted(l, ReferencePeriod.NOTE)));
        remarks.put("air.judged", judged);
        remarks.put("air.few", agents(l -> matters(l) && noted(l, "too-few")));
        remarks.put("air.above-peak", agents(this::abovePeak));
        remarks.put("air.small", small);
        remarks.put("air.bounded", bounded);
        remarks.put("air.minor", minor);
        remarks.values().removeIf(Set::isEmpty);
        return List.copyOf(remarks.entrySet());
    }

    /** Agents of like effect that are not added up, since each has a standard of its own. */
    private Set<String> apart() {
        return advice.trail().all(Caution.class).stream()
                .map(Caution::topic)
                .filter(t -> t.startsWith(APART))
                .map(t -> t.substring(APART.length()))
                .collect(Collectors.toCollection(LinkedHashSet::new));
    }

    /** Agents for which the officer searched a list and found no limit. */
    private Set<String> searched() {
        return advice.inputs().stream()
                .filter(NoneStated.class::isInstance)
                .map(i -> ((NoneStated) i).agent())
                .collect(Collectors.toSet());
    }

    private Set<String> without(String list, Set<String> compared) {
        return advice.trail().all(NoLimit.class).stream()
                .filter(n -> n.list().equals(list))
                .map(NoLimit::agent)
                .filter(a -> !compared.contains(a))
                .collect(Collectors.toCollection(LinkedHashSet::new));
    }

    private Set<String> agents(Predicate<AccountLine> which) {
        return advice.accounts().stream()
                .filter(which)
                .map(l -> l.account().agent())
                .collect(Collectors.toCollection(LinkedHashSet::new));
    }

    private static boolean byFigures(Account account) {
        return BY_FIGURES.contains(account.kind()) && account.factor().isPresent();
    }

    static boolean matters(AccountLine line) {
        return byFigures(line.account()) && line.account().factor().get().compareTo(TENTH) >= 0;
    }

    private List<String> row(AccountLine line, String note) {
        Account account = line.account();
        String known = new KnownBy(advice).of(account);
        boolean unsaid = Set.of(KnownBy.ASSUMED, Settlement.JUDGED.key()).contains(known);
        return List.of(
                Spoken.sentenceCase(spoken.agent(account.agent())),
                account.open() || account.averaging().equals("any") ? "" : spoken.say("open." + account.averaging()),
                unsaid ? "" : Spoken.level(account) + " " + account.unit(),
                account.against().map(Figures::limit).orElse("") + (unsaid ? " " + account.unit() : ""),
                account.factor().map(Spoken::figure).orElse(""),
                spoken.say("air.kind." + (notLaw.contains(account.by()) && !unsaid ? "not-law" : known)),
                note);
    }

    /** What levels and limits are counted as, where the name of the agent does not say it. */
    private Optional<String> counted(List<AccountLine> shown) {
        String counted = shown.stream()
                .filter(l -> !l.countedAs().isEmpty())
                .map(l -> spoken.agent(l.account().agent()) + " (" + spoken.told(l.countedAs()) + ")")
                .distinct()
                .collect(Collectors.joining("; "));
        return counted.isEmpty() ? Optional.empty() : Optional.of(spoken.say("air.counted", counted));
    }

    /** True for an average that counts above the 15 minutes of its agent, as few samples or long work can make it. */
    private boolean abovePeak(AccountLine line) {
        Account average = line.account();
        return average.averaging().equals(AVERAGE)
                && matters(line)
                && advice.accounts().stream()
                        .map(AccountLine::account)
                        .filter(a -> a.agent().equals(average.agent())
                                && a.averaging().equals(Averaging.STEL.key()))
                        .filter(a -> a.unit().equals(average.unit()))
                        .flatMap(a -> a.level().stream())
                        .anyMatch(l ->
                                average.level().filter(a -> a.compareTo(l) > 0).isPresent());
    }

    /** True when this is said of what weakens the figures of an agent. */
    private boolean noted(AccountLine line, String status) {
        return advice.trail()
                .all(Caution.class)
                .contains(new Caution(line.account().agent() + "-" + status));
    }
}
