package org.fumewarden.model;

import java.time.DateTimeException;
import java.time.Period;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * How long a record is kept.
 *
 * @param text the rule as the table writes it
 * @param legs each leg must have run out before the record may go; empty for the other rules
 */
public record Keep(String text, Kind kind, List<Leg> legs) {
    /** The kinds of rule. */
    public enum Kind {
        FOR_PERIOD,
        UNTIL_NEXT,
        WHILE_CURRENT,
        NOT_STATED
    }

    /** A period that counts from an anchor. */
    public record Leg(Anchor anchor, Period period) {}

    private static final Pattern LEG = Pattern.compile("([a-z ]+?) \\+ (P[0-9YMWD]+)");

    public Keep {
        legs = List.copyOf(legs);
    }

    /**
     * Reads a rule; nothing when it is none.
     *
     * @param text "record made + P5Y", "later of record made + P40Y and employment end + P20Y", "until next record", "while
     *     current" or "not stated"
     */
    public static Optional<Keep> parse(String text) {
        String rule = text.strip();
        return switch (rule) {
            case "until next record" -> Optional.of(new Keep(rule, Kind.UNTIL_NEXT, List.of()));
            case "while current" -> Optional.of(new Keep(rule, Kind.WHILE_CURRENT, List.of()));
            case "not stated" -> Optional.of(new Keep(rule, Kind.NOT_STATED, List.of()));
            default -> {
                List<Optional<Leg>> legs = Arrays.stream(
                                rule.replaceFirst("^later of ", "").split(" and "))
                        .map(Keep::leg)
                        .toList();
                yield legs.stream().allMatch(Optional::isPresent)
                        ? Optional.of(new Keep(
                                rule,
                                Kind.FOR_PERIOD,
                                legs.stream().map(Optional::get).toList()))
                        : Optional.empty();
            }
        };
    }

    private static Optional<Leg> leg(String part) {
        Matcher matcher = LEG.matcher(part.strip());
        if (!matcher.matches()) {
            return Optional.empty();
        }
        try {
            Period period = Period.parse(matcher.group(2));
            return Keyed.find(Anchor.class, matcher.group(1).replace(' ', '-')).map(a -> new Leg(a, period));
        } catch (DateTimeException e) {
            return Optional.empty();
        }
    }
}
