package org.fumewarden.whatif;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.fumewarden.advice.Advice;
import org.fumewarden.advice.Check;
import org.fumewarden.advice.Reason;
import org.fumewarden.advice.Respirator;
import org.fumewarden.advice.Status;
import org.fumewarden.codes.Numbers;

/** Marks a trainee's answers against the advice, and explains each mark from the trail. */
public final class Drill {
    /** A given factor is right within this share above the required one: people round up. */
    private static final BigDecimal ROUNDING = new BigDecimal("1.05");

    private static final int SHORTEST_WORD = 4;

    private final Advice advice;

    public Drill(Advice advice) {
        this.advice = advice;
    }

    /** The questions of a round, in order. */
    public enum Part {
        FACTOR("Required protection factor (a number; 0 when the work must not start)"),
        CLASS("Class of respirator (its id; \"none\" when none may be used)"),
        FILTER("Filter (its marking; \"none\" for supplied air or when nothing may be used)"),
        FIRST_CHECK("One check or duty that is owed"),
        SECOND_CHECK("Another one");

        private final String ask;

        Part(String ask) {
            this.ask = ask;
        }

        public String ask() {
            return ask;
        }
    }

    /** A marked answer. */
    public record Mark(Part part, String given, boolean right, String because) {}

    /**
     * Marks one answer.
     *
     * @param earlier the answers before it: the filter is that of the class named, and one duty counts once
     */
    private Mark mark(Part part, String given, List<String> earlier) {
        String answer = given.strip();
        return switch (part) {
            case FACTOR -> factor(answer);
            case CLASS -> deviceClass(answer);
            case FILTER -> filter(answer, earlier.get(Part.CLASS.ordinal()).strip());
            case FIRST_CHECK -> check(part, answer, Optional.empty());
            case SECOND_CHECK -> check(part, answer, matching(earlier.get(Part.FIRST_CHECK.ordinal())));
        };
    }

    private boolean barsEverything() {
        return advice.status() == Status.DO_NOT_ENTER && advice.recommended().isEmpty();
    }

    private Mark factor(String answer) {
        BigDecimal required =
                barsEverything() ? BigDecimal.ZERO : advice.requiredFactor().value();
        String because = barsEverything()
                ? "the work must not start: " + says(advice.stops())
                : "the required factor is " + required.stripTrailingZeros().toPlainString() + ": "
                        + says(advice.requiredFactor().reasons());
        try {
            BigDecimal given = Numbers.decimal(answer);
            boolean low = given.compareTo(required) < 0;
            boolean right = !low && given.compareTo(required.multiply(ROUNDING).max(required.add(BigDecimal.ONE))) <= 0;
            return new Mark(
                    Part.FACTOR, answer, right, (low ? "too low; " : right ? "" : "safe but too high; ") + because);
        } catch (NumberFormatException e) {
            return new Mark(Part.FACTOR, answer, false, "that is no number; " + because);
        }
    }

    private Mark deviceClass(String answer) {
        Optional<Respirator> named = advice.respirators().stream()
                .filter(r -> r.deviceClass().equalsIgnoreCase(answer))
                .findFirst();
        if (answer.equalsIgnoreCase("none")) {
            boolean right = advice.recommended().isEmpty();
            return new Mark(Part.CLASS, answer, right, right ? says(advice.stops()) : "this would serve: " + best());
        }
        if (named.isEmpty()) {
            return new Mark(Part.CLASS, answer, false, "that is no class of this code; this would serve: " + best());
        }
        boolean right = Set.of("recommended", "suitable").contains(named.get().verdict());
        return new Mark(
                Part.CLASS,
                answer,
                right,
                named.get().verdict() + ": " + says(named.get().reasons()));
    }

    private Mark filter(String answer, String namedClass) {
        String expected = advice.respirators().stream()
                .filter(r -> r.deviceClass().equalsIgnoreCase(namedClass))
                .filter(r -> r.verdict().equals("suitable"))
                .findFirst()
                .or(advice::recommended)
                .map(Respirator::filter)
                .filter(f -> !f.startsWith("none"))
                .orElse("none");
        boolean right = !words(answer).isEmpty() && words(expected).containsAll(words(answer))
                || squeeze(answer).equals(squeeze(expected));
        return new Mark(Part.FILTER, answer, right, "the filter is: " + expected);
    }

    private Mark check(Part part, String answer, Optional<Check> taken) {
        Optional<Check> found = matching(answer);
        boolean right = found.isPresent() && !found.equals(taken);
        String because = found.map(c -> c.what() + " [" + c.clause() + "]")
                .orElseGet(() -> "owed are, for example: "
                        + advice.checks().stream().limit(2).map(Check::what).collect(Collectors.joining("; ")));
        return new Mark(
                part,
                answer,
                right,
                found.equals(taken) && found.isPresent() ? "that is the same duty again" : because);
    }

    /** The owed duty that shares most words with the answer. */
    private Optional<Check> matching(String answer) {
        Set<String> wanted = words(answer);
        Check best = null;
        long most = 0;
        for (Check check : advice.checks()) {
            Set<String> has = words(check.id() + " " + check.what());
            long shared = wanted.stream().filter(has::contains).count();
            if (shared > most) {
                most = shared;
                best = check;
            }
        }
        return Optional.ofNullable(best);
    }

    private String best() {
        return advice.recommended().map(Respirator::name).orElse("none");
    }

    private static String says(List<Reason> reasons) {
        return reasons.isEmpty()
                ? "see the trail"
                : reasons.stream()
                        .limit(2)
                        .map(r -> r.says() + " [" + r.source() + " " + r.clause() + "]")
                        .collect(Collectors.joining(" "));
    }

    private static Set<String> words(String text) {
        return Arrays.stream(text.toLowerCase(Locale.ROOT).split("[^\\p{L}\\p{N}]+"))
                .filter(w -> w.length() >= SHORTEST_WORD || w.matches(".*\\d.*"))
                .collect(Collectors.toSet());
    }

    private static String squeeze(String text) {
        return text.toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{N}]", "");
    }

    /** Marks a whole round; missing answers count as empty. */
    public List<Mark> mark(List<String> answers) {
        List<String> full = new ArrayList<>(answers);
        while (full.size() < Part.values().length) {
            full.add("");
        }
        List<Mark> marks = new ArrayList<>();
        for (Part part : Part.values()) {
            String given = full.get(part.ordinal());
            marks.add(mark(part, given, full));
        }
        return marks;
    }
}
