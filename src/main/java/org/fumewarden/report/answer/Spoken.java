package org.fumewarden.report.answer;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.Period;
import java.time.format.DateTimeFormatter;
import java.time.format.FormatStyle;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.commons.lang3.StringUtils;
import org.fumewarden.advice.Reason;
import org.fumewarden.advice.Respirator;
import org.fumewarden.codes.Question;
import org.fumewarden.codes.Vocabulary;
import org.fumewarden.model.Duty;
import org.fumewarden.model.Figures;
import org.fumewarden.model.Measure;
import org.fumewarden.report.html.Words;
import org.fumewarden.report.sheet.Line;
import org.fumewarden.report.sheet.Sign;

/**
 * Names, figures and days as a sheet says them in its language.
 *
 * @param translated ids of the rules whose sentences are in that language
 */
record Spoken(Vocabulary vocabulary, Words words, Set<String> translated) {
    private static final String ENGLISH = "en";

    private static final Pattern FROM = Pattern.compile("(record made|last entry) \\+ (P\\d+[YM])");
    private static final Pattern SPAN = Pattern.compile("(\\+ )?P(\\d+)([YM])");

    String say(String key, Object... parts) {
        return words.say(key, parts);
    }

    String agent(String id) {
        return words.sayOr("agent." + id, vocabulary.name(id));
    }

    String device(String id, String name) {
        return words.sayOr("device." + id, name);
    }

    /** An answer in words. */
    String answer(String question, String value) {
        Optional<Question> known = vocabulary.question(question);
        String name =
                known.map(q -> vocabulary.choices(q).getOrDefault(value, value)).orElse(value);
        return words.sayOr("choice." + question + "." + value, name);
    }

    String day(LocalDate day) {
        return DateTimeFormatter.ofLocalizedDate(FormatStyle.LONG)
                .withLocale(words.ofRuleBase() ? Locale.UK : Locale.forLanguageTag(words.language()))
                .format(day);
    }

    /** The sentence of a rule, marked when it is in another language than the sheet. */
    Line.Says sentence(Sign sign, Reason reason, String notes) {
        boolean own = words.ofRuleBase() || translated.contains(reason.rule());
        return new Line.Says(sign, "", reason.says(), notes, own ? "" : ENGLISH);
    }

    /** A sentence that has no translation. */
    Line.Says foreign(Sign sign, String lead, String says, String notes) {
        return new Line.Says(sign, lead, says, notes, words.ofRuleBase() ? "" : ENGLISH);
    }

    String filter(Respirator respirator) {
        boolean none = respirator.filter().isEmpty() || respirator.filter().equals(Respirator.SUPPLIED_AIR);
        return none ? say("wear.no-filter") : say("wear.filter", respirator.filter());
    }

    /** A sentence of a table in the language of the sheet, or else marked as it stands. */
    Line.Says translated(Sign sign, String key, String says) {
        String own = words.sayOr(key, says);
        return new Line.Says(sign, "", own, "", words.ofRuleBase() || !own.equals(says) ? "" : ENGLISH);
    }

    /** A duty by what is done, and to what where that differs. */
    String deed(Duty duty) {
        String done = "done." + duty.doneBy();
        String plain = words.sayOr(done, vocabulary.name(duty.doneBy().replace('/', '-')));
        return duty.appliesTo().isEmpty()
                ? plain
                : words.sayOr(done + "." + duty.appliesTo().get(0), plain);
    }

    String who(String who) {
        return words.sayOr("who." + who.replace(' ', '-'), who);
    }

    /** How long a record is kept, as people say it. */
    String keep(String keep) {
        Matcher from = FROM.matcher(keep);
        if (from.matches()) {
            return say(
                    from.group(1).equals("record made") ? "keep.from-record" : "keep.from-last-entry",
                    span(from.group(2)));
        }
        return words.sayOr("keep." + keep.replace(' ', '-'), span(keep));
    }

    private String span(String text) {
        return SPAN.matcher(text).replaceAll(m -> {
            boolean years = m.group(3).equals("Y");
            return (m.group(1) == null ? "" : "+ ") + say(years ? "span.years" : "span.months", m.group(2));
        });
    }

    /** An interval as people say it. */
    String every(Period period) {
        String key =
                period.getDays() > 0 ? "days" : period.getMonths() > 0 || period.getYears() == 0 ? "months" : "years";
        long count =
                switch (key) {
                    case "days" -> period.getDays();
                    case "months" -> period.toTotalMonths();
                    default -> period.getYears();
                };
        return count == 1 ? say("when.each." + key) : say("when.every." + key, count);
    }

    /** A factor. */
    static String figure(BigDecimal number) {
        return Figures.factor(number);
    }

    /** A level or limit. */
    static String level(BigDecimal number) {
        return Figures.shown(number);
    }

    /** A measured answer with its unit. */
    static String amount(Measure measure) {
        if (measure.unit().equals("min")) {
            BigDecimal[] hours = measure.value().divideAndRemainder(BigDecimal.valueOf(60));
            String minutes = hours[1].stripTrailingZeros().toPlainString() + " min";
            String whole = hours[0].stripTrailingZeros().toPlainString() + " h";
            return hours[0].signum() == 0 ? minutes : hours[1].signum() == 0 ? whole : whole + " " + minutes;
        }
        return measure.value().stripTrailingZeros().toPlainString() + " " + measure.unit();
    }

    static String sentenceCase(String text) {
        return StringUtils.capitalize(text);
    }
}
