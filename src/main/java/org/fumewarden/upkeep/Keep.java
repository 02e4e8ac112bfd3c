package org.fumewarden.upkeep;

import java.time.DateTimeException;
import java.time.Period;
import java.util.ArrayList;
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
        text = Given.needed("keep", text);
        legs = Given.list(legs);
    }

    /**
     * Reads a rule.
     *
     * @param text "record made + P5Y", "later of record made + P40Y and employment end + P20Y", "until next record", "while
     *     current" or "not stated"
     */
    public static Keep parse(String text) {
        String rule = text.strip();
        switch (rule) {
            case "until next record":
                return new Keep(rule, Kind.UNTIL_NEXT, List.of());
            case "while current":
                return new Keep(rule, Kind.WHILE_CURRENT, List.of());
            case "not stated":
                return new Keep(rule, Kind.NOT_STATED, List.of());
            default:
                return new Keep(rule, Kind.FOR_PERIOD, legs(rule));
        }
    }

    private static List<Leg> legs(String rule) {
        String body = rule.startsWith("later of ") ? rule.substring("later of ".length()) : rule;
        List<Leg> legs = new ArrayList<>();
        for (String part : body.split(" and ")) {
            leg(part).ifPresentOrElse(legs::add, () -> {
                throw StoreException.refused(
                        "keep cannot be \"" + rule + "\".",
                        "\"record made + P5Y\", \"later of ... and ...\", \"until next record\", \"while current\" or \"not stated\".");
            });
        }
        return legs;
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
