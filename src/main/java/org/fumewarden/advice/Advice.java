package org.fumewarden.advice;

import java.time.LocalDate;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.fumewarden.model.Answer;
import org.fumewarden.model.Citation;
import org.fumewarden.model.Input;
import org.fumewarden.model.NoneListed;
import org.fumewarden.task.RegisterNote;
import org.fumewarden.trail.Trail;

/**
 * What the rules conclude about a task. The same task and revision give the same advice, byte for byte.
 *
 * @param unit the unit that the task speaks of; its class is judged apart
 * @param compareBeforeSigning values behind the answer that nobody compared with their text, also those that change nothing
 * @param register what the register said of answers of the task; it explains and decides nothing
 */
public record Advice(
        String title,
        String code,
        LocalDate on,
        Status status,
        RequiredFactor requiredFactor,
        List<AccountLine> accounts,
        List<Reason> interim,
        List<Reason> byChoice,
        List<Respirator> respirators,
        Optional<UnitInHand> unit,
        List<Reason> stops,
        List<Reason> controlsFirst,
        List<Reason> hazards,
        List<Reason> filters,
        List<Check> checks,
        List<Reason> cautions,
        List<OpenQuestion> questions,
        List<Reason> conflicts,
        List<ToCompare> compareBeforeSigning,
        List<RegisterNote> register,
        CodeUsed codeUsed,
        String revision,
        List<Input> inputs,
        Trail trail) {

    private static final String LATER = "#" + NoneListed.THAT_DAY + "/" + NoneListed.EVERY_OTHER;

    /** The line that ends every output. */
    public static final String CLOSING = "Fumewarden advises; it clears no one to start. "
            + "Local codes and a licensed or competent person decide.";

    /** The class that lies ready, when the task names one. */
    public Optional<Respirator> inHand() {
        return inputs.stream()
                .filter(i -> i instanceof Answer a && a.question().equals("class-in-hand"))
                .map(i -> ((Answer) i).value())
                .flatMap(id -> respirators.stream().filter(r -> r.deviceClass().equals(id)))
                .findFirst();
    }

    /** The recommended class, when there is one. */
    public Optional<Respirator> recommended() {
        return respirators.stream()
                .filter(r -> r.verdict() == Suitability.RECOMMENDED)
                .findFirst();
    }

    /** True when charged spare packs are all that the unit that lies ready needs. */
    public boolean lacksOnlyCharge() {
        return unit.filter(UnitInHand::barred)
                        .filter(u ->
                                u.reasons().stream().allMatch(r -> r.subject().equals("battery-too-short")))
                        .isPresent()
                && inHand().filter(r -> r.verdict() == Suitability.BARRED).isEmpty();
    }

    /** The classes with a verdict, in ranking order. */
    public List<Respirator> with(Suitability verdict) {
        return respirators.stream().filter(r -> r.verdict() == verdict).toList();
    }

    /** The sentences that bar every class, each once: what stands in the way of any respirator at all. */
    public List<String> barringAll() {
        if (respirators.isEmpty() || with(Suitability.BARRED).size() < respirators.size()) {
            return List.of();
        }
        Set<String> common = new LinkedHashSet<>(sentences(respirators.get(0)));
        respirators.forEach(r -> common.retainAll(sentences(r)));
        return List.copyOf(common);
    }

    private static List<String> sentences(Respirator respirator) {
        return respirator.reasons().stream().map(Reason::says).toList();
    }

    /** The values on which the answer turns: those to compare before signing. */
    public List<ToCompare> turning() {
        return compareBeforeSigning.stream().filter(ToCompare::turns).toList();
    }

    /** The values behind the answer, without the decisions that say on which of them it turns: what a batch has time for. */
    public List<ToCompare> untried() {
        return compareBeforeSigning instanceof ComparedLater later ? later.untried() : compareBeforeSigning;
    }

    /** How many of those values are known, and documents differ about them. */
    public long disputed() {
        return turning().stream().filter(ToCompare::disputed).count();
    }

    /** True on a day before the lists that are held: limits of a later list stand in, and each is asked for. */
    public boolean limitsAreLater() {
        return laterEdition().isPresent();
    }

    /** The edition of that later list. */
    public Optional<String> laterEdition() {
        return trail.steps().stream()
                .flatMap(step -> step.premises().stream())
                .filter(premise -> premise.address().endsWith(LATER))
                .flatMap(premise -> premise.citation().stream())
                .map(Citation::edition)
                .findFirst();
    }

    /** Until when the values hold, when that is within a year of the day of the task. */
    public Optional<LocalDate> endsSoon() {
        return codeUsed.valuesUntil().filter(last -> !last.isAfter(on.plusYears(1)));
    }
}
