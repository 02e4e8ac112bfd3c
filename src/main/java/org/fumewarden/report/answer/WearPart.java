package org.fumewarden.report.answer;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.fumewarden.advice.Advice;
import org.fumewarden.advice.Reason;
import org.fumewarden.advice.RequiredFactor;
import org.fumewarden.advice.Respirator;
import org.fumewarden.advice.Status;
import org.fumewarden.advice.Suitability;
import org.fumewarden.advice.UnitInHand;
import org.fumewarden.model.Bar;
import org.fumewarden.model.Doubt;
import org.fumewarden.model.Need;
import org.fumewarden.model.Ruling;
import org.fumewarden.report.sheet.Line;
import org.fumewarden.report.sheet.Part;
import org.fumewarden.report.sheet.Sign;
import org.fumewarden.trail.Step;

/** What to wear, or to stay out. */
record WearPart(Advice advice, Optional<String> runTime, Spoken spoken) {
    private static final int FEW = 2;
    private static final Set<String> OF_THE_TEAM = Set.of("rescue", "fire");
    private static final String ANOTHER_UNIT = "another-unit";
    private static final String LOW_OXYGEN = "oxygen-deficient";

    Part write() {
        List<Line> lines = new ArrayList<>();
        List<Reason> escape = advice.cautions().stream()
                .filter(c -> c.subject().startsWith("escape-"))
                .toList();
        if (advice.status() == Status.CONFLICT) {
            lines.add(new Line.Says(Sign.NONE, spoken.say("wear.conflict"), ""));
        } else if (escape.isEmpty()) {
            forWork(lines);
        } else {
            if (advice.status() != Status.COMPLETE) {
                lines.add(new Line.Says(Sign.NONE, spoken.say("wear.nothing-cleared"), ""));
            }
            escape.forEach(c -> lines.add(spoken.sentence(Sign.NONE, c, "")));
        }
        return new Part("wear", spoken.say("page.wear"), lines);
    }

    /** What is told of a rescue or of fire fighting, which have a plan of their own. */
    static List<Reason> ofTheTeam(Advice advice) {
        return advice.cautions().stream()
                .filter(c -> c.subject().equals("rescue-plan"))
                .toList();
    }

    /** What a rescue or a fire takes, whatever factors the code holds: an air that nobody knows asks for no number. */
    private Optional<Reason> kit() {
        return advice.trail()
                .concluding(Bar.class)
                .filter(s -> OF_THE_TEAM.contains(((Bar) s.conclusion()).because()))
                .map(Reason::of)
                .findFirst();
    }

    private void forWork(List<Line> lines) {
        List<Reason> team = ofTheTeam(advice);
        if (!team.isEmpty()) {
            team.forEach(c -> lines.add(spoken.sentence(Sign.NONE, c, "")));
            kit().ifPresent(c -> lines.add(spoken.sentence(Sign.NONE, c, "")));
            advice.unit().filter(UnitInHand::barred).ifPresent(u -> unit(u, lines));
            inHand(lines);
            ofAnotherCode(lines);
            return;
        }
        if (advice.status() == Status.DO_NOT_ENTER) {
            Stopped stopped = new Stopped(advice);
            lines.add(new Line.Says(Sign.NONE, spoken.say(stopped.words(!proofs().isEmpty())), ""));
            advice.cautions().stream()
                    .filter(c -> c.subject().equals("rescue-set"))
                    .forEach(c -> lines.add(spoken.sentence(Sign.NONE, c, "")));
            stopped.after()
                    .forEach(r -> lines.add(spoken.sentence(Sign.NONE, r, "").after(spoken.say("wear.after"))));
        }
        proofs().forEach(r -> lines.add(spoken.sentence(Sign.ITEM, r, "")));
        // What lies ready is what is put on: a unit that must not be used stands before what is worn instead.
        advice.unit().filter(UnitInHand::barred).ifPresent(u -> unit(u, lines));
        advice.recommended().ifPresentOrElse(r -> wear(r, lines), () -> undecided(lines));
        factor(lines);
        advice.recommended()
                .map(Respirator::conditions)
                .orElse(List.of())
                .forEach(c -> lines.add(spoken.sentence(Sign.ITEM, c, "")));
        alsoInHand(lines);
        advice.unit().filter(u -> !u.barred() && !u.reasons().isEmpty()).ifPresent(u -> unit(u, lines));
        inHand(lines);
        ofAnotherCode(lines);
        runTime.filter(says -> advice.lacksOnlyCharge()
                        || advice.unit()
                                .map(UnitInHand::reasons)
                                .orElse(List.of())
                                .isEmpty())
                .ifPresent(says -> lines.add(new Line.Says(Sign.NONE, spoken.told(says))));
    }

    /** What the employer must have proved where an advice on low oxygen rests on it. */
    private List<Reason> proofs() {
        return advice.trail()
                .concluding(Ruling.class)
                .filter(s -> ((Ruling) s.conclusion()).topic().equals(LOW_OXYGEN))
                .map(Reason::of)
                .toList();
    }

    private void wear(Respirator respirator, List<Line> lines) {
        String name = Spoken.sentenceCase(spoken.device(respirator.deviceClass(), respirator.name()));
        String filter = spoken.filter(respirator);
        if (advice.status() == Status.DO_NOT_ENTER) {
            lines.add(new Line.Says(Sign.NONE, spoken.say("wear.only-if") + ":", name + ". " + filter));
        } else if (advice.status() == Status.INCOMPLETE && !StatePart.onlyOfAnother(advice)) {
            lines.add(new Line.Says(Sign.NONE, spoken.say("wear.whatever") + ":"));
            lines.add(new Line.Says(Sign.NONE, name + ".", filter));
        } else {
            lines.add(new Line.Says(Sign.NONE, name + ".", filter));
        }
    }

    /** The unit in hand: what it is fit for, and what mends it. */
    private void unit(UnitInHand unit, List<Line> lines) {
        String name = unit.id().isEmpty() ? spoken.say("wear.this-unit") : spoken.say("wear.unit", unit.id());
        String heals = unit.heals().stream().map(spoken::told).collect(Collectors.joining(" "));
        Sign sign = unit.barred() ? Sign.LEAVE : Sign.OPEN;
        lines.add(new Line.Says(
                sign,
                name + ": " + spoken.say(advice.lacksOnlyCharge() ? "wear.short" : "wear." + unit.condition()),
                heals));
        unit.reasons().forEach(r -> lines.add(spoken.sentence(Sign.ITEM, r, "")));
        interim(true).forEach(i -> lines.add(spoken.sentence(Sign.NONE, i, "")));
    }

    /** What is ordered while questions are open: of the unit alone, or of the work. */
    private List<Reason> interim(boolean ofUnit) {
        return advice.interim().stream()
                .filter(i -> i.subject().equals(ANOTHER_UNIT) == ofUnit)
                .toList();
    }

    /** A class that lies ready and is ruled out is said where the eye looks for what to wear. */
    private void inHand(List<Line> lines) {
        advice.inHand().filter(r -> r.verdict() == Suitability.BARRED).ifPresent(r -> {
            String says = Spoken.sentenceCase(spoken.device(r.deviceClass(), r.name())) + ": "
                    + spoken.say(
                            new Stopped(advice).ofWearerAlone(r.deviceClass())
                                    ? "wear.not-for-this-wearer"
                                    : "wear.not-for-this-work");
            boolean alsoTheUnit = advice.unit().filter(UnitInHand::barred).isPresent();
            if (alsoTheUnit && !r.reasons().isEmpty()) {
                lines.add(spoken.sentence(Sign.LEAVE, r.reasons().get(0), "").after(says));
                return;
            }
            lines.add(new Line.Says(Sign.LEAVE, says, ""));
            r.reasons().stream().limit(FEW).forEach(why -> lines.add(spoken.sentence(Sign.ITEM, why, "")));
        });
    }

    /** A class that lies ready and may be worn as well, and what holds for it alone: the orders below are for both. */
    private void alsoInHand(List<Line> lines) {
        List<String> said = advice.recommended().map(Respirator::conditions).orElse(List.of()).stream()
                .map(Reason::says)
                .toList();
        advice.inHand()
                .filter(r -> r.verdict() == Suitability.SUITABLE || r.verdict() == Suitability.UNDECIDED)
                .filter(r -> advice.recommended().isPresent() && advice.status() != Status.DO_NOT_ENTER)
                .filter(r -> advice.unit().filter(UnitInHand::barred).isEmpty())
                .ifPresent(r -> {
                    String settled = advice.status() == Status.COMPLETE ? ".settled" : "";
                    String key = "wear.in-hand." + r.verdict().key() + settled;
                    String name = spoken.device(r.deviceClass(), r.name());
                    lines.add(new Line.Says(Sign.NONE, spoken.say(key, name), spoken.filter(r)));
                    r.reasons().stream()
                            .filter(why -> doubts(r.deviceClass()).contains(why.step()))
                            .limit(FEW)
                            .forEach(why -> lines.add(spoken.sentence(Sign.ITEM, why, "")));
                    r.conditions().stream()
                            .filter(c -> !said.contains(c.says()))
                            .forEach(c -> lines.add(spoken.sentence(Sign.ITEM, c, "")));
                });
    }

    /** The steps that leave a class open. */
    private Set<String> doubts(String deviceClass) {
        return advice.trail().steps().stream()
                .filter(s ->
                        s.conclusion() instanceof Doubt d && d.deviceClass().equals(deviceClass))
                .map(Step::id)
                .collect(Collectors.toSet());
    }

    /** A class that lies ready and that this code does not know, so that no rule speaks of it. */
    private void ofAnotherCode(List<Line> lines) {
        advice.unit()
                .map(UnitInHand::deviceClass)
                .filter(c -> !c.isEmpty() && advice.inHand().isEmpty())
                .ifPresent(c -> lines.add(new Line.Says(
                        Sign.LEAVE,
                        Spoken.sentenceCase(spoken.answer("class-in-hand", c)) + ": "
                                + spoken.say(byChoice() ? "wear.not-counted" : "wear.not-for-this-work"),
                        spoken.words()
                                .sayOr("wear.other-code." + advice.codeUsed().id(), spoken.say("wear.other-code")))));
    }

    private boolean byChoice() {
        return advice.status() == Status.COMPLETE && !advice.byChoice().isEmpty();
    }

    private void undecided(List<Line> lines) {
        List<Respirator> undecided = advice.with(Suitability.UNDECIDED);
        if (advice.status() == Status.COMPLETE) {
            advice.byChoice().stream()
                    .map(c -> spoken.sentence(c.subject().equals("nothing-required") ? Sign.NONE : Sign.ITEM, c, ""))
                    .forEach(lines::add);
            return;
        }
        if (advice.status() == Status.DO_NOT_ENTER) {
            names("wear.only-if", advice.with(Suitability.SUITABLE), lines);
            return;
        }
        boolean noneSoFar =
                !advice.byChoice().isEmpty() && !advice.requiredFactor().restsOnNothing();
        boolean ordered = !advice.interim().isEmpty();
        if (noneSoFar || !ordered) {
            lines.add(
                    new Line.Says(Sign.NONE, spoken.say(noneSoFar ? "wear.none-so-far" : "wear.nothing-cleared"), ""));
        }
        if (ordered) {
            interim(false).forEach(i -> lines.add(spoken.sentence(Sign.NONE, i, "")));
        }
        names("wear.may-do", noneSoFar ? List.of() : undecided, lines);
    }

    private void names(String key, List<Respirator> respirators, List<Line> lines) {
        if (!respirators.isEmpty()) {
            String names = respirators.stream()
                    .limit(FEW)
                    .map(r -> spoken.device(r.deviceClass(), r.name()))
                    .collect(Collectors.joining("; "));
            int more = respirators.size() - FEW;
            String others = more > 0 ? "; " + spoken.say("wear.more", more) : "";
            lines.add(new Line.Says(Sign.NONE, spoken.say(key) + ": " + names + others + "."));
        }
    }

    /** Where nobody may enter, a figure must not read as leave to go in with that much protection. */
    private void factor(List<Line> lines) {
        if (advice.status() == Status.DO_NOT_ENTER) {
            return;
        }
        RequiredFactor factor = advice.requiredFactor();
        String open = factor.open() ? " " + spoken.say("factor.open") : "";
        String own = "factor.assigned." + advice.codeUsed().id();
        String assigned = spoken.words().all().containsKey(own) ? own : "factor.assigned";
        String worn = advice.recommended()
                .flatMap(Respirator::factor)
                .map(f -> spoken.say(assigned, Spoken.figure(f)) + " ")
                .orElse("");
        if (factor.asksForOne()) {
            Optional<Need> beside = beside(factor);
            String required = beside.filter(n -> advice.recommended().isPresent())
                    .map(n -> spoken.say("factor.required.so", Spoken.figure(n.value())))
                    .orElse(spoken.say("factor.required", Spoken.figure(factor.value()), spoken.agent(factor.agent()))
                            + beside.map(n -> " " + spoken.say("factor.beside", Spoken.figure(n.value())))
                                    .orElse(""));
            lines.add(new Line.Says(Sign.NONE, worn + required + open));
            UntoldRows rows = new UntoldRows(advice, spoken);
            rows.kept()
                    .filter(n -> advice.status() == Status.COMPLETE && n.value().compareTo(factor.value()) == 0)
                    .map(rows::waitsFor)
                    .findFirst()
                    .ifPresent(what -> lines.add(new Line.Says(Sign.ITEM, spoken.say("wear.kept", what))));
        } else if (advice.byChoice().isEmpty() || factor.restsOnNothing()) {
            lines.add(new Line.Says(Sign.NONE, none(factor)));
        }
    }

    /** The larger factor of a filter that lets gases of a sum pass, which the table of the air shows too. */
    private Optional<Need> beside(RequiredFactor factor) {
        return advice.trail().all(Need.class).stream()
                .filter(n -> !n.ofEveryClass() && n.value().compareTo(factor.value()) > 0)
                .filter(n ->
                        advice.recommended().filter(r -> !Spoken.passesGases(r)).isEmpty())
                .max(Comparator.comparing(Need::value));
    }

    private String none(RequiredFactor factor) {
        if (factor.restsOnNothing()) {
            return spoken.say("factor.nothing");
        }
        return factor.open() ? spoken.say("factor.none.open") : spoken.say("factor.none");
    }
}
