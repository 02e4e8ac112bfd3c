package org.fumewarden.report.answer;

import java.util.ArrayList;
import java.util.List;
import org.fumewarden.advice.Advice;
import org.fumewarden.report.sheet.Line;
import org.fumewarden.report.sheet.Part;
import org.fumewarden.report.sheet.Sign;

/** Who stands behind the sheet, until when, and what to compare before signing. */
record IssuePart(Advice advice, String number, Spoken spoken) {
    private static final int SHOWN = 12;

    Part write() {
        List<Line> lines = new ArrayList<>();
        lines.add(new Line.Scan(
                number + " " + advice.revision(),
                spoken.say("issue.revision", advice.revision().substring(0, SHOWN), number.substring(0, SHOWN))));
        lines.add(new Line.Says(Sign.NONE, spoken.say("issue.compare", Spoken.UNVERIFIED)));
        lines.add(new Line.Says(Sign.NONE, spoken.say("issue.valid")));
        lines.add(new Line.Blanks(
                List.of(spoken.say("issue.by"), spoken.say("issue.on"), spoken.say("issue.signature"))));
        return new Part("issue", spoken.say("page.issue"), lines);
    }
}
