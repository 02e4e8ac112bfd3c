package org.fumewarden.report.html;

import java.time.Period;
import java.util.List;
import org.fumewarden.model.Keep;
import org.fumewarden.model.Keyed;

/** What a duty asks, who does it, how often, and how long its record is kept, as people say it. */
public record DutyTerms(Speech speech) {
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
    public String keep(Keep keep) {
        Object[] legs = keep.legs().stream().map(this::leg).toArray();
        return switch (legs.length) {
            case 0 -> speech.named("keep." + keep.text().replace(' ', '-'), keep.text());
            case 1 -> legs[0].toString();
            default -> speech.say("the later of {0} and {1}", legs);
        };
    }

    private String leg(Keep.Leg leg) {
        long months = leg.period().toTotalMonths();
        String span = months % 12 == 0
                ? speech.words().say("span.years", months / 12)
                : speech.words().say("span.months", months);
        return speech.words().say("keep.from-" + leg.anchor().key(), span);
    }

    /** An interval. */
    public String every(Period period) {
        String key =
                period.getDays() > 0 ? "days" : period.getMonths() > 0 || period.getYears() == 0 ? "months" : "years";
        long count =
                switch (key) {
                    case "days" -> period.getDays();
                    case "months" -> period.toTotalMonths();
                    default -> period.getYears();
                };
        Words words = speech.words();
        return count == 1 ? words.say("when.each." + key) : words.say("when.every." + key, count);
    }
}
