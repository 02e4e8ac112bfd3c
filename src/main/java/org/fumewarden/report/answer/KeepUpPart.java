package org.fumewarden.report.answer;

import java.time.Period;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.apache.commons.lang3.StringUtils;
import org.fumewarden.advice.Advice;
import org.fumewarden.advice.Check;
import org.fumewarden.model.Duty;
import org.fumewarden.model.Frequency;
import org.fumewarden.model.Row;
import org.fumewarden.report.sheet.Line;
import org.fumewarden.report.sheet.Part;
import org.fumewarden.report.sheet.Sign;

/** The duties that the task brings: first those that its air brings, then the others, by when they fall due. */
record KeepUpPart(Advice advice, List<Row> rows, Spoken spoken) {

    /** When duties fall due, in the order of a calendar: how often, or at which event. */
    private record When(int days, String key) implements Comparable<When> {
        @Override
        public int compareTo(When other) {
            return Comparator.comparingInt(When::days).thenComparing(When::key).compare(this, other);
        }
    }

    Optional<Part> write() {
        Map<String, Duty> duties = duties(rows);
        List<String> air = new ArrayList<>();
        List<Line> lines = new ArrayList<>();
        byWhen(advice, rows, spoken).forEach((when, checks) -> {
            Map<Boolean, List<Check>> split = checks.stream()
                    .collect(Collectors.partitioningBy(
                            c -> ofTheAir(duties.get(c.id())) && planned(duties.get(c.id()))));
            if (!split.get(true).isEmpty()) {
                air.add(StringUtils.uncapitalize(when) + ": " + deeds(split.get(true), duties));
            }
            if (!split.get(false).isEmpty()) {
                lines.add(new Line.Says(Sign.NONE, when + ":", deeds(split.get(false), duties) + "."));
            }
        });
        if (!air.isEmpty()) {
            lines.add(0, new Line.Says(Sign.NONE, spoken.say("page.keep-up.air"), String.join("; ", air) + "."));
        }
        return lines.isEmpty() ? Optional.empty() : Optional.of(new Part("keep-up", spoken.say("page.keep-up"), lines));
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

    private static boolean ofTheAir(Duty duty) {
        return duty.when().stream().anyMatch(c -> c.circumstance().equals("agent"));
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
