package org.fumewarden.report.answer;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.fumewarden.advice.Advice;
import org.fumewarden.advice.Bench;
import org.fumewarden.advice.Status;
import org.fumewarden.codes.Tongue;
import org.fumewarden.codes.Vocabulary;
import org.fumewarden.engine.RuleBase;
import org.fumewarden.model.Refused;
import org.fumewarden.model.Row;
import org.fumewarden.model.Sha256;
import org.fumewarden.report.AdviceJson;
import org.fumewarden.report.SamplePart;
import org.fumewarden.report.TaskPlots;
import org.fumewarden.report.html.Speech;
import org.fumewarden.report.html.Words;
import org.fumewarden.report.sheet.Line;
import org.fumewarden.report.sheet.Part;
import org.fumewarden.report.sheet.Sheet;
import org.fumewarden.shift.GasLife;
import org.fumewarden.shift.ShiftSheet;

/** The sheet of advice: one page that is read, and behind it, when asked for, all that it rests on. */
public final class AdviceSheet {
    private AdviceSheet() {}

    /**
     * Writes the sheet.
     *
     * @param detail false for the page alone
     */
    public static Sheet of(Bench bench, Advice advice, Words words, boolean detail) {
        RuleBase base = bench.advisor(bench.code()).base().on(advice.on());
        Speech speech = Speech.of(words, base.book().vocabulary());
        if (words.ofRuleBase()) {
            Spoken spoken = new Spoken(base.book().vocabulary(), speech, Optional.empty());
            return sheet(bench, advice, advice, spoken, detail);
        }
        Tongue tongue = base.book().tongue(words.language());
        Bench speaking = bench.speaking(words.language(), words.names());
        Advice said = speaking.advise();
        Spoken spoken = new Spoken(speaking.book().vocabulary(), speech, Optional.of(tongue));
        return sheet(bench, advice, said, spoken, detail);
    }

    /** True for a part that cites laws, whose numbers keep their points. */
    private static boolean cites(Part part, Spoken spoken) {
        return part.key().equals("notes")
                || part.key().equals("compare") && !spoken.words().ofRuleBase();
    }

    /** Says at the top how many sentences are not in the language of the sheet. */
    private static Sheet sheet(Bench bench, Advice advice, Advice said, Spoken spoken, boolean detail) {
        RuleBase base = bench.advisor(bench.code()).base();
        List<Row> rows = base.rowsOn(advice.on());
        Tone tone = new Tone(spoken.speech()::spelt);
        List<Part> page =
                new PagePlan(said, number(said, spoken.speech()), rows, runTime(bench, advice), spoken, tone).parts();
        List<Part> annex = detail
                ? new Annex(said, rows, base.book().documents(), spoken)
                        .write(SamplePart.of(bench, advice, spoken.speech())).stream()
                                .map(p -> cites(p, spoken) ? p : tone.of(p))
                                .toList()
                : List.of();
        long foreign = Stream.concat(page.stream(), annex.stream())
                .flatMap(p -> p.lines().stream())
                .filter(l -> l instanceof Line.Says says && !says.language().isEmpty())
                .count();
        String under = spoken.say(
                "sheet.under",
                spoken.say("sheet.kind"),
                advice.codeUsed().id(),
                spoken.words()
                        .sayOr(
                                "code." + advice.codeUsed().id(),
                                advice.codeUsed().name()),
                spoken.day(advice.on()));
        return new Sheet(
                spoken.say("sheet.kind"),
                advice.title(),
                under
                        + (isOutdated(advice)
                                ? ". "
                                        + spoken.say(
                                                "sheet.later", advice.codeUsed().checkedOn())
                                : "")
                        + (foreign == 0 ? "" : ". " + spoken.say("sheet.untranslated.some", foreign)),
                StatePart.barsTheUnit(advice) ? "unit-barred" : advice.status().key(),
                page,
                annex,
                (detail ? "" : spoken.say("sheet.no-annex") + " ") + spoken.say("closing"),
                spoken.words().language());
    }

    /** Whether the unit lasts the shift, when the task tells how long it runs; empty where nobody may start. */
    private static Optional<String> runTime(Bench bench, Advice advice) {
        return advice.status() == Status.DO_NOT_ENTER
                        || bench.task(bench.code(), Map.of()).curves().isEmpty()
                ? Optional.empty()
                : lasts(TaskPlots.sheet(bench, advice), bench.book().vocabulary());
    }

    /** How long the unit lasts, or that nobody can say when its gas filter is due. */
    private static Optional<String> lasts(ShiftSheet sheet, Vocabulary vocabulary) {
        return sheet.plan().value().map(plan -> plan.words(0).get(0)).or(() -> sheet.gases().stream()
                .map(GasLife::time)
                .filter(Refused.class::isInstance)
                .map(time -> ((Refused<?>) time).sentence())
                .filter(why -> why.startsWith("The change time "))
                .findFirst()
                .map(why -> "No change time can be worked out. Not stated: "
                        + vocabulary.questions().stream()
                                .filter(q -> Arrays.asList(why.split("[ ,]+|[.](?= |$)"))
                                        .contains(q.path()))
                                .map(q -> vocabulary.name(q.id()))
                                .collect(Collectors.joining(", "))
                        + "."));
    }

    /** SHA-256 of the advice as {@code --format json} writes it in this language, so that paper and file are told to belong together. */
    private static String number(Advice said, Speech speech) {
        return Sha256.hex(AdviceJson.write(said, Optional.empty(), speech).getBytes(StandardCharsets.UTF_8));
    }

    /** True when the day of the advice lies more than a year after the code was compared with its documents. */
    private static boolean isOutdated(Advice advice) {
        return advice.on().minusYears(1).toString().compareTo(advice.codeUsed().checkedOn()) > 0;
    }
}
