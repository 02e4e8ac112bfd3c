package org.fumewarden.report.answer;

import java.util.ArrayList;
import java.util.List;
import org.fumewarden.advice.Advice;
import org.fumewarden.advice.ToCompare;
import org.fumewarden.report.sheet.Line;
import org.fumewarden.report.sheet.Part;
import org.fumewarden.report.sheet.Sign;

/** Who stands behind the sheet, until when, and what to compare before signing. */
record IssuePart(Advice advice, String number, Spoken spoken) {
    private static final int SHOWN = 12;

    /**
     * The part.
     *
     * @param shortly true where the page has no room for more
     */
    Part write(boolean shortly) {
        List<Line> lines = new ArrayList<>();
        String rules = advice.revision().substring(0, SHOWN);
        String told = number.substring(0, SHOWN);
        lines.add(new Line.Scan(
                number + " " + advice.revision(),
                spoken.tongue()
                        .map(t -> spoken.say(
                                "issue.revision.words", rules, t.revision().substring(0, SHOWN), told))
                        .orElseGet(() -> spoken.say("issue.revision", rules, told))));
        advice.turning().stream()
                .filter(ToCompare::changed)
                .forEach(value -> lines.add(
                        new Line.Says(Sign.NONE, spoken.told(value.value()) + ". " + spoken.told(value.matters()))));
        lines.add(new Line.Says(
                Sign.NONE,
                advice.laterEdition()
                        .map(edition ->
                                spoken.say("issue.later", spoken.speech().cited(edition)))
                        .orElseGet(shortly ? this::compare : this::known)));
        lines.add(new Line.Says(Sign.NONE, spoken.say("issue.valid")));
        advice.endsSoon()
                .filter(last -> !advice.limitsAreLater())
                .ifPresent(last -> lines.add(new Line.Says(Sign.NONE, spoken.say("issue.until", spoken.day(last)))));
        advice.codeUsed()
                .ended()
                .forEach(row -> lines.add(new Line.Says(
                        Sign.NONE, spoken.say("issue.ended", spoken.told(row.value()), spoken.day(row.until())))));
        lines.add(new Line.Blanks(
                List.of(spoken.say("issue.by"), spoken.say("issue.on"), spoken.say("issue.signature"))));
        return new Part("issue", spoken.say("page.issue"), lines);
    }

    /** How far the values behind the answer are known, in one line. */
    private String known() {
        long disputed = advice.disputed();
        long unseen = advice.turning().size() - disputed;
        String first = unseen == 0
                ? spoken.say("issue.known")
                : unseen == 1 ? spoken.say("issue.unknown.one") : spoken.say("issue.unknown", unseen);
        return disputed == 0 ? first : first + " " + spoken.say("issue.disputed", disputed);
    }

    private String compare() {
        int values = advice.turning().size();
        String key = advice.disputed() == 0 ? "issue.compare" : "issue.compare.disputed";
        return values == 0 ? known() : spoken.say(key, values, advice.disputed());
    }
}
