package org.fumewarden.report.answer;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.fumewarden.advice.Advice;
import org.fumewarden.advice.OpenQuestion;
import org.fumewarden.report.sheet.Line;
import org.fumewarden.report.sheet.Part;
import org.fumewarden.report.sheet.Sign;

/** What is still to be answered or measured. Nothing is left out: levels that are missing stand together. */
record OpenPart(Advice advice, Spoken spoken) {
    private static final int ASKED = 6;

    Optional<Part> write() {
        List<Line> lines = new ArrayList<>();
        Map<String, List<String>> levels = new LinkedHashMap<>();
        List<OpenQuestion> others = new ArrayList<>();
        for (OpenQuestion question : advice.questions()) {
            String[] parts = question.question().split("\\.");
            if (parts.length == 3 && parts[0].equals("exposures")) {
                levels.computeIfAbsent(parts[1], a -> new ArrayList<>()).add(spoken.say("open." + parts[2]));
            } else {
                others.add(question);
            }
        }
        others.stream()
                .limit(ASKED)
                .map(q -> spoken.words().sayOr("ask." + q.question(), spoken.told(q.ask())))
                .forEach(q -> lines.add(new Line.Says(Sign.OPEN, q)));
        if (others.size() > ASKED) {
            lines.add(new Line.Says(
                    Sign.OPEN,
                    spoken.say("open.also") + ":",
                    others.stream().skip(ASKED).map(this::shortly).collect(Collectors.joining("; ")) + "."));
        }
        if (!levels.isEmpty()) {
            lines.add(new Line.Says(
                    Sign.OPEN,
                    spoken.say("open.measure") + ":",
                    levels.entrySet().stream()
                                    .map(e -> spoken.agent(e.getKey()) + " (" + String.join(", ", e.getValue()) + ")")
                                    .collect(Collectors.joining("; "))
                            + "."));
        }
        return lines.isEmpty() ? Optional.empty() : Optional.of(new Part("open", spoken.say("page.open"), lines));
    }

    private String shortly(OpenQuestion question) {
        return spoken.words()
                .sayOr(
                        "asked." + question.question(),
                        spoken.told(spoken.vocabulary().name(question.question())));
    }
}
