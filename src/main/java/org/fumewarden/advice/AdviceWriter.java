package org.fumewarden.advice;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.fumewarden.assessment.Assessment;
import org.fumewarden.assessment.ExposureTables;
import org.fumewarden.codes.CodeBook;
import org.fumewarden.codes.CodeCard;
import org.fumewarden.codes.DatedRow;
import org.fumewarden.codes.Question;
import org.fumewarden.engine.RuleBase;
import org.fumewarden.model.Account;
import org.fumewarden.model.Averaging;
import org.fumewarden.model.ByChoice;
import org.fumewarden.model.Caution;
import org.fumewarden.model.Conclusion;
import org.fumewarden.model.Control;
import org.fumewarden.model.Duty;
import org.fumewarden.model.FilterNeed;
import org.fumewarden.model.Gap;
import org.fumewarden.model.Gate;
import org.fumewarden.model.Hazard;
import org.fumewarden.model.Interim;
import org.fumewarden.model.Keyed;
import org.fumewarden.model.Need;
import org.fumewarden.model.NoLimit;
import org.fumewarden.model.Owed;
import org.fumewarden.model.Ruling;
import org.fumewarden.model.Standing;
import org.fumewarden.model.Stop;
import org.fumewarden.task.Task;
import org.fumewarden.trail.Step;
import org.fumewarden.trail.Trail;

/** Orders the conclusions of a trail into advice. It adds no judgement of its own. */
final class AdviceWriter {
    private final RuleBase base;
    private final CodeBook book;
    private final Task task;
    private final ExposureTables figures;
    private final List<Assessment> assessed;
    private final Trail trail;
    private final WithOther other;
    private final Optional<LocalDate> last;

    AdviceWriter(
            RuleBase base,
            Task task,
            ExposureTables figures,
            List<Assessment> assessed,
            Trail trail,
            WithOther other,
            Optional<LocalDate> last) {
        this.base = base;
        this.book = base.book();
        this.task = task;
        this.figures = figures;
        this.assessed = List.copyOf(assessed);
        this.trail = trail;
        this.other = other;
        this.last = last;
    }

    Advice write() {
        RequiredFactor required = requiredFactor();
        Status status = status();
        List<Reason> conflicts = conflicts();
        List<Respirator> respirators = new RespiratorWriter(book, figures, trail)
                .write().stream()
                        .map(r -> status == Status.CONFLICT ? r.undecided(conflicts) : r)
                        .toList();
        BeforeSigning values = new BeforeSigning(figures, base, trail, required, respirators, status);
        ComparedLater compare = new ComparedLater();
        Advice advice = new Advice(
                task.title(),
                task.code(),
                task.on(),
                status,
                required,
                new AccountWriter(book.vocabulary(), figures, task.inputs(), trail).write(),
                interim(),
                reasons(ByChoice.class),
                respirators,
                UnitWriter.write(book, task, figures, trail, named(status, respirators)),
                stops(),
                reasons(Control.class),
                hazards(),
                reasons(FilterNeed.class),
                checks(),
                cautions(),
                questions(),
                conflicts,
                compare,
                task.register(),
                codeUsed(),
                book.revision(),
                task.inputs(),
                trail);
        compare.by(() -> values.untried(advice), () -> values.tried(advice, other));
        return advice;
    }

    /** The most serious state that a rule concluded. */
    private Status status() {
        return trail.all(Standing.class).stream()
                .map(s -> Keyed.find(Status.class, s.state()).orElseThrow())
                .min(Comparator.naturalOrder())
                .orElseThrow(() -> new IllegalStateException("no rule concludes how far the advice may be relied on"));
    }

    private CodeUsed codeUsed() {
        CodeCard card = book.card();
        List<DatedRow> ended = book.ended(task.on());
        Set<String> read = ended.isEmpty() ? Set.of() : LastDay.read(trail);
        return new CodeUsed(
                card.id(),
                card.name(),
                card.edition(),
                card.checkedOn(),
                card.lacks(),
                last,
                ended.stream()
                        .filter(row -> read.contains(row.row().ref().address()))
                        .map(row -> new CodeUsed.Ended(
                                row.row().ref().address(),
                                new RowInWords(book.vocabulary()).value(row.row()),
                                row.until()))
                        .toList());
    }

    private RequiredFactor requiredFactor() {
        List<Step> steps = trail.concluding(Need.class)
                .filter(s -> ((Need) s.conclusion()).ofEveryClass())
                .toList();
        boolean open = trail.all(Account.class).stream().anyMatch(Account::open);
        Set<String> reckoned = steps.stream().map(x -> x.conclusion().subject()).collect(Collectors.toSet());
        List<String> without = trail.all(NoLimit.class).stream()
                .map(NoLimit::agent)
                .filter(a -> !reckoned.contains(a))
                .toList();
        Optional<Need> largest = steps.stream().map(s -> (Need) s.conclusion()).reduce((a, b) -> b.exceeds(a) ? b : a);
        if (largest.isEmpty()) {
            return new RequiredFactor(BigDecimal.ZERO, open, "none", "none", "none", without, List.of(), List.of());
        }
        Need need = largest.get();
        List<Reason> why = steps.stream()
                .filter(s -> s.conclusion() == need)
                .map(Reason::of)
                .toList();
        List<ByStatistic> others = new StatisticTable(figures, assessed, trail).of(need);
        return new RequiredFactor(
                need.value(), open, need.subject(), need.basis(), need.statistic(), without, others, why);
    }

    private List<Reason> stops() {
        List<Reason> stops = new ArrayList<>(reasons(Stop.class));
        stops.addAll(reasons(Gate.class));
        return stops;
    }

    private List<Reason> hazards() {
        Map<String, Step> byAgent = new LinkedHashMap<>();
        trail.concluding(Hazard.class)
                .filter(s -> ((Hazard) s.conclusion()).rank().equals("principal"))
                .forEach(s -> byAgent.putIfAbsent(s.conclusion().subject(), s));
        List<Reason> hazards = new ArrayList<>();
        hazards.addAll(trail.concluding(Need.class)
                .filter(s -> ((Need) s.conclusion()).aboveOne())
                .map(Reason::of)
                .toList());
        byAgent.values().forEach(s -> hazards.add(Reason.of(s)));
        return hazards;
    }

    /** What is said of the filter of the class that the page names. */
    private static Optional<String> named(Status status, List<Respirator> respirators) {
        return respirators.stream()
                .filter(r -> r.verdict() == Suitability.RECOMMENDED && status != Status.DO_NOT_ENTER)
                .map(Respirator::filter)
                .findFirst();
    }

    /** What is safe until every question is answered: to stay out, before any class. */
    private List<Reason> interim() {
        List<Step> orders = trail.concluding(Interim.class).toList();
        Optional<Step> out = orders.stream()
                .filter(s -> s.conclusion().subject().equals("stay-out"))
                .findFirst();
        return out.map(step -> List.of(Reason.of(step)))
                .orElseGet(() -> Reason.once(orders).stream().limit(1).toList());
    }

    private List<Reason> cautions() {
        List<Reason> cautions = new ArrayList<>(reasons(Caution.class));
        cautions.addAll(reasons(NoLimit.class));
        return cautions;
    }

    private <C extends Conclusion> List<Reason> reasons(Class<C> type) {
        return Reason.once(trail.concluding(type).toList());
    }

    private List<OpenQuestion> questions() {
        Map<String, List<Reason>> byQuestion = trail.concluding(Gap.class)
                .collect(Collectors.groupingBy(
                        s -> s.conclusion().subject(),
                        LinkedHashMap::new,
                        Collectors.mapping(Reason::of, Collectors.toList())));
        return byQuestion.entrySet().stream()
                .map(e -> new OpenQuestion(e.getKey(), ask(e.getKey()), e.getValue()))
                .toList();
    }

    /** The question in words, also for levels of exposure, which no vocabulary entry holds. */
    private String ask(String id) {
        Optional<Question> known = book.vocabulary().question(id);
        if (known.isPresent()) {
            return known.get().ask();
        }
        String[] parts = id.split("\\.");
        if (parts.length == 3 && parts[0].equals("exposures")) {
            if (parts[2].equals("judged")) {
                return "How does a competent person judge " + book.vocabulary().name(parts[1])
                        + ", for which this code has no limit?";
            }
            if (parts[2].equals("limit")) {
                return "Which limit does this country set for "
                        + book.vocabulary().name(parts[1]) + "? Its list is not included here.";
            }
            String averaging =
                    Keyed.find(Averaging.class, parts[2]).map(Averaging::words).orElse(parts[2]);
            return "How high is the exposure to " + book.vocabulary().name(parts[1]) + ", " + averaging + "?";
        }
        return book.vocabulary().name(id);
    }

    private List<Reason> conflicts() {
        Map<String, List<Step>> byTopic = trail.concluding(Ruling.class)
                .collect(Collectors.groupingBy(s -> s.conclusion().subject(), LinkedHashMap::new, Collectors.toList()));
        Stream<Step> rulings =
                byTopic.values().stream().filter(AdviceWriter::differ).flatMap(List::stream);
        Stream<Step> figures = trail.concluding(Standing.class)
                .filter(s -> ((Standing) s.conclusion()).state().equals("conflict"))
                .filter(s -> !byTopic.containsKey(s.conclusion().subject()));
        return Stream.concat(rulings, figures).map(Reason::of).toList();
    }

    /** Rulings on one topic that do not all say the same. */
    private static boolean differ(List<Step> steps) {
        return steps.stream().anyMatch(s -> s.conclusion() != steps.get(0).conclusion());
    }

    private List<Check> checks() {
        Map<String, Duty> duties = figures.all(Duty.class).collect(Collectors.toMap(Duty::id, d -> d, (a, b) -> a));
        Map<String, List<Step>> owed = trail.concluding(Owed.class)
                .collect(Collectors.groupingBy(s -> s.conclusion().subject(), LinkedHashMap::new, Collectors.toList()));
        return owed.entrySet().stream()
                .map(e -> check(duties.get(e.getKey()), e.getValue()))
                .sorted(Comparator.comparing(Check::id))
                .toList();
    }

    private static Check check(Duty duty, List<Step> steps) {
        return new Check(
                duty.id(),
                what(duty, steps),
                duty.who(),
                duty.frequency().key() + duty.period().map(p -> " " + p).orElse(""),
                duty.recorded(),
                duty.fields(),
                duty.keep().text(),
                duty.citation().isOfOrganisation() ? Check.OWN : duty.force().key(),
                duty.citation().source(),
                duty.citation().clause(),
                duty.citation().confidence(),
                steps.get(0).id());
    }

    /** What is to be done, and what would make it go away where a circumstance is not known. */
    private static String what(Duty duty, List<Step> steps) {
        String unless = steps.stream()
                .map(s -> (Owed) s.conclusion())
                .filter(o -> !o.certain())
                .map(Owed::unless)
                .distinct()
                .sorted()
                .collect(Collectors.joining(", or "));
        return unless.isEmpty() ? duty.what() : duty.what() + ". Skip it only when this is recorded: " + unless + ".";
    }
}
