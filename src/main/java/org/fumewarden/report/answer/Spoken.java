package org.fumewarden.report.answer;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.Period;
import java.util.Optional;
import org.apache.commons.lang3.StringUtils;
import org.fumewarden.advice.Reason;
import org.fumewarden.advice.Respirator;
import org.fumewarden.codes.Question;
import org.fumewarden.codes.Tongue;
import org.fumewarden.codes.Vocabulary;
import org.fumewarden.model.Account;
import org.fumewarden.model.Duty;
import org.fumewarden.model.Figures;
import org.fumewarden.model.Keep;
import org.fumewarden.model.Measure;
import org.fumewarden.report.html.DutyTerms;
import org.fumewarden.report.html.Speech;
import org.fumewarden.report.html.Words;
import org.fumewarden.report.sheet.Line;
import org.fumewarden.report.sheet.Sign;

/**
 * Names, figures and days as a sheet says them in its language.
 *
 * @param tongue the sentences of rules in that language; none in that of the rule base
 */
record Spoken(Vocabulary vocabulary, Speech speech, Optional<Tongue> tongue) {
    private static final String ENGLISH = "en";

    Words words() {
        return speech.words();
    }

    String say(String key, Object... parts) {
        return words().say(key, parts);
    }

    String agent(String id) {
        return words().sayOr("agent." + id, told(vocabulary.name(id)));
    }

    String device(String id, String name) {
        return words().sayOr("device." + id, told(name));
    }

    /** An answer in words(). */
    String answer(String question, String value) {
        Optional<Question> known = vocabulary.question(question);
        String name =
                known.map(q -> vocabulary.choices(q).getOrDefault(value, value)).orElse(value);
        return words().sayOr("choice." + question + "." + value, device(value, name));
    }

    String day(LocalDate day) {
        return speech.day(day);
    }

    /** True for a filter for particles alone. */
    static boolean passesGases(Respirator respirator) {
        return !respirator.filter().equals(Respirator.SUPPLIED_AIR)
                && !respirator.filter().matches(".*\\b([ABEK]+\\d|AX|SX|NO|Hg|CO)\\b.*");
    }

    /** The figures of a sentence, without those of the name that it is about. */
    String figures(Reason reason) {
        String name = told(vocabulary.nameWithin(reason.subject()));
        return told(reason.says()).replace(name, "").replaceAll("[^0-9]+", " ");
    }

    /** The sentence of a rule, marked when it is in another language than the sheet. */
    Line.Says sentence(Sign sign, Reason reason, String notes) {
        boolean own = tongue.map(t -> t.sentences().containsKey(reason.rule())).orElse(true);
        return new Line.Says(sign, "", told(reason.says()), notes, own ? "" : ENGLISH);
    }

    /** A sentence that the program or a table wrote in English, in the language of the sheet. */
    String told(String says) {
        return words().ofRuleBase() ? says : speech.told(says);
    }

    String filter(Respirator respirator) {
        boolean none = respirator.filter().isEmpty() || respirator.filter().equals(Respirator.SUPPLIED_AIR);
        return none ? say("wear.no-filter") : say("wear.filter", told(respirator.filter()));
    }

    /** A sentence of a table in the language of the sheet, or else marked as it stands. */
    Line.Says translated(Sign sign, String key, String says) {
        String own = words().sayOr(key, says);
        return new Line.Says(sign, "", own, "", words().ofRuleBase() || !own.equals(says) ? "" : ENGLISH);
    }

    /** A duty by what is done, and to what where that differs. */
    String deed(Duty duty) {
        return terms().deed(duty.doneBy(), duty.appliesTo());
    }

    String who(String who) {
        return terms().who(who);
    }

    /** How long a record is kept, as people say it. */
    String keep(String keep) {
        return Keep.parse(keep).map(terms()::keep).orElse(keep);
    }

    /** An interval as people say it. */
    String every(Period period) {
        return terms().every(period);
    }

    private DutyTerms terms() {
        return new DutyTerms(speech);
    }

    /** A factor. */
    static String figure(BigDecimal number) {
        return Figures.factor(number);
    }

    /** A level or limit. */
    static String level(BigDecimal number) {
        return Figures.shown(number);
    }

    /** A level as its ratio follows from it. */
    static String level(Account account) {
        return account.level()
                .map(l -> account.against()
                        .flatMap(a -> account.factor().map(f -> Figures.agreeing(l, a, figure(f))))
                        .orElse(level(l)))
                .orElse("");
    }

    /** A measured answer with its unit. */
    static String amount(Measure measure) {
        if (measure.unit().equals("min")) {
            BigDecimal[] hours = measure.value().divideAndRemainder(BigDecimal.valueOf(60));
            String minutes = hours[1].stripTrailingZeros().toPlainString() + " min";
            String whole = hours[0].stripTrailingZeros().toPlainString() + " h";
            return hours[0].signum() == 0 ? minutes : hours[1].signum() == 0 ? whole : whole + " " + minutes;
        }
        if (Figures.inKilopascals(measure.value(), measure.unit())) {
            return Figures.kilopascals(measure.value()).stripTrailingZeros().toPlainString() + " kPa";
        }
        String unit = measure.unit().equals("years") ? "" : " " + measure.unit();
        return (measure.value().stripTrailingZeros().toPlainString() + unit).strip();
    }

    static String sentenceCase(String text) {
        return StringUtils.capitalize(text);
    }
}
