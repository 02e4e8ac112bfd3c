package org.fumewarden.report.answer;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.fumewarden.advice.AccountLine;
import org.fumewarden.advice.Advice;
import org.fumewarden.advice.Reason;
import org.fumewarden.advice.Status;
import org.fumewarden.advice.UnitInHand;
import org.fumewarden.model.Account;
import org.fumewarden.model.Answer;
import org.fumewarden.model.Caution;
import org.fumewarden.model.Doubt;
import org.fumewarden.model.Input;
import org.fumewarden.model.Judged;
import org.fumewarden.model.Measure;
import org.fumewarden.model.NoneStated;
import org.fumewarden.model.Settlement;
import org.fumewarden.model.StatedLimit;
import org.fumewarden.model.Unknown;
import org.fumewarden.report.sheet.Line;
import org.fumewarden.report.sheet.Part;
import org.fumewarden.report.sheet.Sign;
import org.fumewarden.task.RegisterNote;

/** How far the advice may be relied on, and for which work it holds: what was told, so that it cannot hang beside another job. */
record StatePart(Advice advice, Spoken spoken) {
    private static final String HEIGHT = "altitude";

    Part write() {
        List<Line> lines = new ArrayList<>();
        String key = advice.status().key();
        lines.add(new Line.State(
                spoken.say((barsTheUnit(advice)
                                ? "state.unit"
                                : text().equals("state.other") ? "state.other" : "state." + key)
                        + ".word"),
                spoken.say(text(), advice.questions().size())));
        why().forEach(r -> lines.add(spoken.sentence(Sign.ITEM, r, "")));
        even(lines);
        told("told.of-job", ToldOrder.JOB, lines);
        told("told.of-wearer", ToldOrder.WEARER, lines);
        told("told.of-kit", ToldOrder.kit(spoken.vocabulary()), lines);
        told("told.not-told", notTold(), "; ", lines);
        told("told.limits", Stream.concat(limits(), none()).toList(), "; ", lines);
        judged(lines);
        advice.register().stream()
                .map(RegisterNote::says)
                .distinct()
                .forEach(s -> lines.add(new Line.Says(Sign.NONE, spoken.say("told.register") + ":", spoken.told(s))));
        return new Part("state", spoken.say("page.state"), lines);
    }

    /** True for an answer that the page tells. */
    boolean repeats(Answer answer) {
        return onPage(answer.question()) && tells(answer);
    }

    /** True for an amount that the page tells. */
    boolean repeats(Measure measure) {
        return onPage(measure.question()) && tells(measure);
    }

    private boolean onPage(String question) {
        return Stream.of(ToldOrder.JOB, ToldOrder.WEARER, ToldOrder.kit(spoken.vocabulary()))
                .anyMatch(l -> l.contains(question));
    }

    /** True when the work may be done, but not with the unit that lies ready. */
    static boolean barsTheUnit(Advice advice) {
        return Set.of(Status.COMPLETE, Status.INCOMPLETE).contains(advice.status())
                && advice.unit().filter(UnitInHand::barred).isPresent();
    }

    /** Where no one reason bars every class, what bars even the strongest. */
    private void even(List<Line> lines) {
        if (advice.status() == Status.DO_NOT_ENTER && WearPart.ofTheTeam(advice).isEmpty()) {
            Stopped stopped = new Stopped(advice);
            stopped.strongest().ifPresent(r -> stopped.barring(r)
                    .forEach(why -> lines.add(spoken.sentence(Sign.ITEM, why, "")
                            .after(spoken.say("state.even", spoken.device(r.deviceClass(), r.name()))))));
        }
    }

    private String text() {
        if (advice.status() == Status.COMPLETE && barsTheUnit(advice)) {
            return advice.lacksOnlyCharge() ? "state.unit.short" : "state.unit";
        }
        if (new Stopped(advice).byWearer()) {
            return "state.wearer";
        }
        if (advice.status() == Status.INCOMPLETE && advice.questions().isEmpty()) {
            return "state.no-class";
        }
        if (onlyOfAnother(advice)) {
            return "state.other";
        }
        if (advice.status() == Status.DO_NOT_ENTER && WearPart.ofTheTeam(advice).isEmpty() && nothingToEnter()) {
            return "state.outdoors";
        }
        boolean stopped = advice.status() == Status.DO_NOT_ENTER;
        return stopped && !WearPart.ofTheTeam(advice).isEmpty()
                ? "state.team"
                : "state." + advice.status().key();
    }

    /** True where every question left decides only on a class beside the one to wear. */
    static boolean onlyOfAnother(Advice advice) {
        Set<String> doubts =
                advice.trail().all(Doubt.class).stream().map(Doubt::question).collect(Collectors.toSet());
        return advice.status() == Status.INCOMPLETE
                && advice.recommended().isPresent()
                && !advice.requiredFactor().open()
                && advice.questions().stream().allMatch(q -> doubts.contains(q.question()));
    }

    /** True in the open air, and in a building whose air is not what stops the work. */
    private boolean nothingToEnter() {
        Set<String> open = advice.stops().isEmpty() ? Set.of("outdoors", "indoors") : Set.of("outdoors");
        return advice.inputs().stream()
                .anyMatch(i -> i instanceof Answer a && a.question().equals("place") && open.contains(a.value()));
    }

    /** Who answers for what was not measured, and what of it does not count. */
    private void judged(List<Line> lines) {
        Set<String> counted = advice.accounts().stream()
                .map(AccountLine::account)
                .filter(a -> a.kind() == Settlement.JUDGED)
                .map(Account::agent)
                .collect(Collectors.toSet());
        List<String> by = new ArrayList<>();
        List<String> not = new ArrayList<>();
        for (Input input : advice.inputs()) {
            if (input instanceof Judged judged) {
                String said = spoken.agent(judged.agent()) + " (" + judged.by() + ", "
                        + spoken.day(LocalDate.parse(judged.day())) + bound(judged) + ")";
                if (counted.contains(judged.agent())) {
                    by.add(said);
                } else {
                    not.add(said);
                }
            }
        }
        told("told.judged", by, "; ", lines);
        told("told.set-aside", not, "; ", lines);
    }

    /** How far below its limit, where the judgement says more than that it is kept. */
    private String bound(Judged judged) {
        return judged.bound().equals(Judged.AT_MOST_THE_LIMIT) ? "" : ", " + spoken.say("bound." + judged.bound());
    }

    private void told(String key, List<String> items, String between, List<Line> lines) {
        if (!items.isEmpty()) {
            lines.add(new Line.Says(Sign.NONE, spoken.say(key, String.join(between, items))));
        }
    }

    /** What stands in the way of the work, or contradicts itself. */
    private List<Reason> why() {
        List<Reason> why = new ArrayList<>();
        if (advice.status() == Status.DO_NOT_ENTER) {
            why.addAll(new Stopped(advice).now());
        }
        if (advice.status() == Status.CONFLICT) {
            why.addAll(advice.conflicts());
        }
        Set<String> said = new HashSet<>();
        return why.stream().filter(r -> said.add(r.rule() + " " + r.subject())).toList();
    }

    private void told(String key, List<String> questions, List<Line> lines) {
        List<String> told = new ArrayList<>();
        for (String question : questions) {
            for (Input input : advice.inputs()) {
                told(question, input, told);
            }
        }
        if (!told.isEmpty()) {
            lines.add(new Line.Says(Sign.NONE, spoken.say(key) + ":", String.join("; ", told) + "."));
        }
    }

    private void told(String question, Input input, List<String> told) {
        if (input instanceof Answer answer && answer.question().equals(question) && tells(answer)) {
            told.add(spoken.words()
                    .sayOr(
                            "told." + question + "." + (byVessel(answer) ? "by-vessel" : answer.value()),
                            spoken.say("told." + question, answer(question, answer.value()))));
        } else if (input instanceof Measure measure && measure.question().equals(question) && tells(measure)) {
            told.add(spoken.say("told." + question, Spoken.amount(measure)));
        }
    }

    /** True for a place that was not told, or told otherwise: the inside of a container is a confined space. */
    private static boolean byVessel(Answer answer) {
        return answer.question().equals("place") && answer.path().equals("task.vessel");
    }

    /** False for a height that changes nothing on the page. */
    private boolean tells(Measure measure) {
        return !measure.question().equals(HEIGHT) || topics().contains(HEIGHT);
    }

    /** False for no container, and for a coating that was not stripped, and where there is none: the coating itself is told. */
    private boolean tells(Answer answer) {
        if (answer.question().equals("vessel")) {
            return !answer.value().equals("none");
        }
        return !answer.question().equals("coating-stripped")
                || answer.value().equals("true")
                        && advice.inputs().stream()
                                .noneMatch(i -> i instanceof Answer a
                                        && a.question().equals("coating")
                                        && a.value().equals("none"));
    }

    private String answer(String question, String value) {
        return List.of("filter-expiry", "filter-opened").contains(question)
                ? spoken.day(LocalDate.parse(value))
                : spoken.answer(question, value);
    }

    /** What the reader would look for among the answers and does not find. */
    private List<String> notTold() {
        return Stream.of(ToldOrder.JOB, ToldOrder.WEARER, ToldOrder.KIT)
                .flatMap(List::stream)
                .filter(q -> advice.inputs().stream()
                        .anyMatch(i -> i instanceof Unknown u && u.question().equals(q)))
                .map("untold."::concat)
                .filter(spoken.words().all()::containsKey)
                .map(k -> spoken.say(k))
                .toList();
    }

    /** A look-up that found no limit, and where this code has one, that it decides. */
    private Stream<String> none() {
        Set<String> topics = topics();
        return advice.inputs().stream()
                .filter(NoneStated.class::isInstance)
                .map(NoneStated.class::cast)
                .map(n -> spoken.say(
                        topics.contains("limit-held-" + n.agent()) ? "state.none.held" : "state.none",
                        spoken.agent(n.agent()),
                        n.from(),
                        spoken.day(LocalDate.parse(n.day()))));
    }

    private Set<String> topics() {
        return advice.trail().all(Caution.class).stream().map(Caution::topic).collect(Collectors.toSet());
    }

    private Stream<String> limits() {
        return advice.inputs().stream()
                .filter(StatedLimit.class::isInstance)
                .map(StatedLimit.class::cast)
                .map(l -> spoken.agent(l.agent()) + " " + Spoken.level(l.value()) + " "
                        + l.unit().symbol() + " ("
                        + spoken.say("open." + l.averaging().key()) + ", " + l.from() + ")");
    }
}
