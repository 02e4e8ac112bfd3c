package org.fumewarden.report.html;

import java.time.Period;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.fumewarden.model.Keyed;

/** What a duty asks, who does it, how often, and how long its record is kept, as people say it. */
public record DutyTerms(Speech speech) {
    private static final int WEEK = 7;
    private static final Pattern LEG = Pattern.compile("([a-z ]+?) \\+ P(\\d+)([YM])");

    /**
     * What is done, and to what where that differs.
     *
     * @param doneBy key of the deed, such as {@code air-test/breathing}
     */
    public String deed(String doneBy, List<? extends Keyed> appliesTo) {
        String key = "done." + doneBy;
        String plain = speech.named(key, doneBy.replace('/', ' ').replace('-', ' '));
        return appliesTo.isEmpty()
                ? plain
                : speech.named(key + "." + appliesTo.get(0).key(), plain);
    }

    public String who(String who) {
        return speech.named("who." + who.replace(' ', '-'), who);
    }

    /** How long a record is kept. */
    public String keep(String keep) {
        List<String> legs = Arrays.stream(keep.replaceFirst("^later of ", "").split(" and "))
                .map(this::leg)
                .toList();
        return legs.size() < 2 ? legs.get(0) : speech.say("the later of {0} and {1}", legs.toArray());
    }

    private String leg(String text) {
        Matcher leg = LEG.matcher(text);
        if (!leg.matches()) {
            return speech.named("keep." + text.replace(' ', '-'), text);
        }
        String span = speech.words().say(leg.group(3).equals("Y") ? "span.years" : "span.months", leg.group(2));
        return speech.words().say("keep.from-" + leg.group(1).replace(' ', '-'), span);
    }

    /** An interval. */
    public String every(Period period) {
        String key = period.getDays() > 0 && period.getDays() % WEEK == 0
                ? "weeks"
                : period.getDays() > 0 ? "days" : period.getMonths() > 0 || period.getYears() == 0 ? "months" : "years";
        long count =
                switch (key) {
                    case "weeks" -> period.getDays() / WEEK;
                    case "days" -> period.getDays();
                    case "months" -> period.toTotalMonths();
                    default -> period.getYears();
                };
        Words words = speech.words();
        return count == 1 ? words.say("when.each." + key) : words.say("when.every." + key, count);
    }
}
