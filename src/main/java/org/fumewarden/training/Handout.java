package org.fumewarden.training;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.apache.commons.lang3.StringUtils;
import org.fumewarden.report.html.Words;
import org.fumewarden.report.sheet.Line;
import org.fumewarden.report.sheet.Part;
import org.fumewarden.report.sheet.Sheet;
import org.fumewarden.report.sheet.Sign;

/** Training on paper: the tasks on one side, the answers with their reasons on the other; and the certificate of attendance. */
public final class Handout {
    private final Words words;

    private Handout(Words words) {
        this.words = words;
    }

    /** The tasks for the room, and behind them the answers for the trainer. */
    public static Sheet of(List<Round> rounds, Words words) {
        Handout handout = new Handout(words);
        List<Part> page = new ArrayList<>();
        List<Part> annex = new ArrayList<>();
        for (int i = 0; i < rounds.size(); i++) {
            page.add(handout.tasks(i + 1, rounds.get(i)));
            annex.add(handout.answers(i + 1, rounds.get(i)));
        }
        return handout.sheet("handout", page, annex);
    }

    private Part tasks(int number, Round round) {
        List<Line> lines = new ArrayList<>();
        lines.add(new Line.Head(round.title()));
        if (!round.story().isEmpty()) {
            lines.add(new Line.Says(Sign.NONE, round.story()));
        }
        round.facts().forEach(f -> lines.add(new Line.Says(Sign.ITEM, f)));
        for (int i = 0; i < round.items().size(); i++) {
            RoundItem item = round.items().get(i);
            lines.add(new Line.Head(number + "." + (i + 1) + " " + item.ask()));
            item.choices().forEach(c -> lines.add(new Line.Says(Sign.CHOICE, c.says())));
        }
        return new Part("training-tasks-" + number, say("paper.task", number), lines);
    }

    private Part answers(int number, Round round) {
        List<Line> lines = new ArrayList<>();
        for (int i = 0; i < round.items().size(); i++) {
            RoundItem item = round.items().get(i);
            RoundItem.Choice right = item.rightChoice();
            Mark mark = item.pick(right);
            String clause = mark.clause().isEmpty() ? "" : " [" + mark.clause() + "]";
            String says = bare(right.says());
            String answer = bare(mark.because()).equals(says) ? "" : says + ". ";
            lines.add(new Line.Says(Sign.ITEM, number + "." + (i + 1), answer + mark.because() + clause));
            item.choices().stream().filter(c -> !c.equals(right)).forEach(c -> item.pick(c)
                    .mistake()
                    .ifPresent(m -> lines.add(new Line.Says(Sign.NONE, bare(c.says()) + ": " + m.says()))));
        }
        return new Part("training-answers-" + number, say("paper.answers", number, round.title()), lines);
    }

    /** A choice without the full stop that others bring along. */
    private static String bare(String says) {
        return StringUtils.removeEnd(says, ".");
    }

    /** The certificate: names are written by hand, none is kept. Its last line logs the training in one step. */
    public static Sheet certificate(List<Round> rounds, Words words, String day) {
        Handout handout = new Handout(words);
        String topics = topics(rounds, words);
        List<Line> lines = new ArrayList<>();
        lines.add(new Line.Blanks(List.of(handout.say("paper.name"), handout.say("paper.day"))));
        lines.add(new Line.Says(Sign.NONE, handout.say("paper.attended")));
        List<Line> about = new ArrayList<>();
        about.add(new Line.Says(Sign.NONE, topics));
        rounds.stream().map(Round::title).distinct().forEach(t -> about.add(new Line.Says(Sign.ITEM, t)));
        List<Line> signs = List.of(
                new Line.Blanks(List.of(handout.say("paper.trainer"), handout.say("paper.attendee"))),
                new Line.Says(Sign.NONE, handout.say("paper.not-competence")));
        List<Line> log = List.of(
                new Line.Says(Sign.NONE, handout.say("paper.log")), new Line.Says(Sign.NONE, logged(topics, day)));
        return handout.sheet(
                "certificate",
                List.of(
                        new Part("training-who", handout.say("paper.who"), lines),
                        new Part("training-topics", handout.say("paper.topics"), about),
                        new Part("training-signed", handout.say("paper.signed"), signs),
                        new Part("training-log", handout.say("paper.record"), log)),
                List.of());
    }

    /** The command that logs a training; the id of the person and the trainer are filled in by hand. */
    static String logged(String topics, String day) {
        return "fumewarden entry training content=\"" + topics.replace("\"", "'") + "\" result=passed on=" + day
                + " item=ID by=\"NAME\"";
    }

    /** The topics of a training, each once. */
    static String topics(List<Round> rounds, Words words) {
        return rounds.stream()
                .map(r -> r.topic().isEmpty() ? r.title() : words.say("ui.training.topic." + r.topic()))
                .distinct()
                .collect(Collectors.joining(", "));
    }

    private Sheet sheet(String kind, List<Part> page, List<Part> annex) {
        String title = say("paper." + kind);
        return new Sheet(title, title, say("paper.under"), kind, page, annex, words.say("closing"), words.language());
    }

    private String say(String key, Object... parts) {
        return words.say("ui.training." + key, parts);
    }
}
