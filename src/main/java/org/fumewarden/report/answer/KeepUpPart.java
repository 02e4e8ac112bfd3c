package org.fumewarden.report.answer;

import java.time.Period;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.apache.commons.lang3.StringUtils;
import org.fumewarden.advice.Advice;
import org.fumewarden.advice.Check;
import org.fumewarden.advice.Status;
import org.fumewarden.model.Duty;
import org.fumewarden.model.Force;
import org.fumewarden.model.Frequency;
import org.fumewarden.model.Member;
import org.fumewarden.model.Row;
import org.fumewarden.report.sheet.Line;
import org.fumewarden.report.sheet.Part;
import org.fumewarden.report.sheet.Sign;

/** The duties that the task brings, by when they fall due: the law first. */
record KeepUpPart(Advice advice, List<Row> rows, Spoken spoken) {
    /** What an entry says that was done, of the duties that the page never leaves to the annex. */
    private static final List<String> CORE = List.of("medical", "air-test/workplace", "fit-test", "examination");

    /** When duties fall due, in the order of a calendar: how often, or at which event. */
    private record When(int days, String key) implements Comparable<When> {
        @Override
        public int compareTo(When other) {
            return Comparator.comparingInt(When::days).thenComparing(When::key).compare(this, other);
        }
    }

    /** A line of the page, and how many duties it tells. */
    private record Told(Line line, int duties) {}

    Optional<Part> write() {
        List<Line> lines = told().stream().map(Told::line).toList();
        return lines.isEmpty() ? Optional.empty() : Optional.of(new Part("keep-up", spoken.say("page.keep-up"), lines));
    }

    /** How many duties the last lines tell. */
    int duties(int lastLines) {
        List<Told> told = told();
        return told.subList(told.size() - lastLines, told.size()).stream()
                .mapToInt(Told::duties)
                .sum();
    }

    /** What the law asks for because of this air, what it asks for otherwise, what is to be offered, and at last what nobody is bound to. */
    private List<Told> told() {
        Map<String, Duty> duties = duties(rows);
        List<Told> told = new ArrayList<>();
        oneLine("page.keep-up.air", duties, d -> mandatory(d) && ofTheAir(d) && planned(d))
                .ifPresent(told::add);
        chosen(duties, d -> mandatory(d) && !(ofTheAir(d) && planned(d)))
                .forEach((when, checks) -> told.add(
                        new Told(new Line.Says(Sign.NONE, when + ":", deeds(checks, duties) + "."), checks.size())));
        oneLine("page.keep-up.offered", duties, d -> binding(d) && !mandatory(d))
                .ifPresent(told::add);
        oneLine("page.keep-up.practice", duties, d -> !binding(d)).ifPresent(told::add);
        int idle = (int) advice.checks().stream().filter(this::idle).count();
        if (idle > 0) {
            String says = spoken.say(told.isEmpty() ? "page.all.keep-up" : "page.more.keep-up", idle);
            told.add(new Told(new Line.Says(Sign.NONE, says), idle));
        }
        return told;
    }

    /**
     * What the law orders for this air and this kit, by when, without who does it, and how many more duties there are: the least
     * that the page holds.
     */
    Optional<String> core() {
        Map<String, Duty> duties = duties(rows);
        List<Duty> law = advice.checks().stream()
                .map(c -> duties.get(c.id()))
                .filter(d -> mandatory(d) && !kind(d).isEmpty())
                .toList();
        Set<String> planned =
                law.stream().filter(KeepUpPart::foreseen).map(KeepUpPart::kind).collect(Collectors.toSet());
        Map<String, List<Check>> byWhen =
                chosen(duties, d -> law.contains(d) && (foreseen(d) || !planned.contains(kind(d))));
        Set<String> said = new HashSet<>();
        List<String> parts = new ArrayList<>();
        byWhen.forEach((when, checks) -> {
            String deeds = checks.stream()
                    .map(c -> spoken.deed(duties.get(c.id())))
                    .filter(said::add)
                    .collect(Collectors.joining(", "));
            if (!deeds.isEmpty()) {
                parts.add(StringUtils.uncapitalize(when) + ": " + deeds);
            }
        });
        int told = byWhen.values().stream().mapToInt(List::size).sum();
        return parts.isEmpty()
                ? Optional.empty()
                : Optional.of(spoken.say(
                        "page.keep-up.core",
                        String.join("; ", parts),
                        advice.checks().size() - told));
    }

    /** Which of the kinds that always stand on the page a duty is; empty for the others, and for what is only kept. */
    private static String kind(Duty duty) {
        return duty.frequency() == Frequency.CONTINUOUS
                ? ""
                : CORE.stream().filter(duty.doneBy()::startsWith).findFirst().orElse("");
    }

    /** Whether it comes without a cause: by date, or at a change. */
    private static boolean foreseen(Duty duty) {
        return duty.frequency() != Frequency.EVENT;
    }

    /** Whether a duty is one of use, where nobody may start: the annex lists it. */
    private boolean idle(Check check) {
        return advice.status() == Status.DO_NOT_ENTER && check.who().contains("wearer");
    }

    /** Those that are chosen; where one deed may be due sooner or later, by what is not known yet, the sooner is told. */
    private Map<String, List<Check>> chosen(Map<String, Duty> duties, Predicate<Duty> chosen) {
        Map<String, List<Check>> byWhen = new LinkedHashMap<>();
        Set<String> sooner = new HashSet<>();
        byWhen(advice, rows, spoken).forEach((when, checks) -> {
            List<Check> some = checks.stream()
                    .filter(c -> !idle(c) && chosen.test(duties.get(c.id())))
                    .filter(c -> duties.get(c.id()).period().isEmpty()
                            || sooner.add(spoken.deed(duties.get(c.id())) + " " + c.who()))
                    .toList();
            if (!some.isEmpty()) {
                byWhen.put(when, some);
            }
        });
        return byWhen;
    }

    private Optional<Told> oneLine(String key, Map<String, Duty> duties, Predicate<Duty> some) {
        Map<String, List<Check>> byWhen = chosen(duties, some);
        String says = byWhen.entrySet().stream()
                .map(e -> StringUtils.uncapitalize(e.getKey()) + ": " + deeds(e.getValue(), duties))
                .collect(Collectors.joining("; "));
        int count = byWhen.values().stream().mapToInt(List::size).sum();
        return says.isEmpty()
                ? Optional.empty()
                : Optional.of(new Told(new Line.Says(Sign.NONE, spoken.say(key), says + "."), count));
    }

    /** The duties by when they fall due, in words, in the order of a calendar. */
    static Map<String, List<Check>> byWhen(Advice advice, List<Row> rows, Spoken spoken) {
        Map<String, Duty> duties = duties(rows);
        Map<When, List<Check>> byWhen = new TreeMap<>();
        advice.checks().forEach(c -> byWhen.computeIfAbsent(when(duties.get(c.id())), w -> new ArrayList<>())
                .add(c));
        Map<String, List<Check>> inWords = new LinkedHashMap<>();
        byWhen.forEach((when, checks) -> inWords.put(words(when, spoken), checks));
        return inWords;
    }

    private static Map<String, Duty> duties(List<Row> rows) {
        return rows.stream()
                .filter(Duty.class::isInstance)
                .map(Duty.class::cast)
                .collect(Collectors.toMap(Duty::id, d -> d, (a, b) -> b));
    }

    private String deeds(List<Check> checks, Map<String, Duty> duties) {
        Map<String, Set<String>> deeds = new LinkedHashMap<>();
        checks.forEach(c -> deeds.computeIfAbsent(spoken.deed(duties.get(c.id())), d -> new LinkedHashSet<>())
                .add(spoken.who(c.who())));
        Map<String, List<String>> byWho = new LinkedHashMap<>();
        deeds.forEach((deed, who) -> byWho.computeIfAbsent(String.join(" / ", who), w -> new ArrayList<>())
                .add(deed));
        return byWho.entrySet().stream()
                .map(e -> String.join(", ", e.getValue()) + " (" + e.getKey() + ")")
                .collect(Collectors.joining("; "));
    }

    private static boolean binding(Duty duty) {
        return duty.force() == Force.LAW || duty.force() == Force.ACOP;
    }

    /** Whether nobody may leave it: what a person is only to be offered stands in a list of its own. */
    private boolean mandatory(Duty duty) {
        return binding(duty)
                && rows.stream()
                        .noneMatch(r -> r instanceof Member m
                                && m.set().equals("offered")
                                && m.item().equals(duty.id()));
    }

    private static boolean ofTheAir(Duty duty) {
        return duty.when().stream()
                .anyMatch(c ->
                        c.circumstance().equals("agent") || c.circumstance().equals("health-surveillance"));
    }

    /** Whether a date can be set for it today: every so often, or once at the start. */
    private static boolean planned(Duty duty) {
        return duty.period().isPresent() || duty.frequency() == Frequency.ONCE;
    }

    private static When when(Duty duty) {
        if (duty.period().isEmpty() || duty.frequency() == Frequency.ONCE) {
            return switch (duty.frequency()) {
                case EACH_USE, EACH_DONNING -> new When(0, "each-use");
                case AFTER_USE -> new When(1, "after-use");
                case CONTINUOUS -> new When(Integer.MAX_VALUE, "continuous");
                default -> new When(Integer.MAX_VALUE - 1, duty.frequency().key());
            };
        }
        Period period = duty.period().get();
        int days = (int) period.toTotalMonths() * 31 + period.getDays();
        return new When(days + 1, period.toString());
    }

    private static String words(When when, Spoken spoken) {
        return when.key().startsWith("P") ? spoken.every(Period.parse(when.key())) : spoken.say("when." + when.key());
    }
}
