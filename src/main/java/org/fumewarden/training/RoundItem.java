package org.fumewarden.training;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.UnaryOperator;

/**
 * One question of a round.
 *
 * @param kind names it in score sheets and tests
 * @param choices exactly one of which is right
 * @param reads what is taken for an answer besides the words of a choice
 * @param hint one sentence that helps without telling
 * @param marker marks an answer in free words or the id of a choice
 */
public record RoundItem(
        String kind, String ask, List<Choice> choices, Reads reads, String hint, Function<String, Mark> marker) {

    /** What people may answer with. */
    public enum Reads {
        /** The number of a choice. */
        CHOICE,
        /** The number of a choice, or free words. */
        WORDS,
        /** A number of its own right, so that choices are not taken by number. */
        NUMBER
    }

    /** Longest answer that is read. */
    public static final int LONGEST = 300;

    public RoundItem {
        choices = List.copyOf(choices);
    }

    /** An answer to pick. */
    public record Choice(String id, String says) {}

    /** Marks an answer: the number of a choice, or free words where the question reads them. */
    public Mark mark(String answer) {
        String given = answer.strip();
        given = given.substring(0, Math.min(LONGEST, given.length()));
        Optional<Choice> picked = picked(given);
        return picked.isPresent() ? pick(picked.get()) : marker.apply(given);
    }

    /** Marks a choice. */
    public Mark pick(Choice choice) {
        return marker.apply(choice.id()).of(choice.says());
    }

    private Optional<Choice> picked(String given) {
        if (reads == Reads.NUMBER || !given.matches("[1-9]")) {
            return Optional.empty();
        }
        int number = given.charAt(0) - '1';
        return number < choices.size() ? Optional.of(choices.get(number)) : Optional.empty();
    }

    /** The same question, whose marks cite a clause as {@code told} has it. */
    RoundItem citing(UnaryOperator<Mark> told) {
        return new RoundItem(kind, ask, choices, reads, hint, answer -> told.apply(marker.apply(answer)));
    }

    /** The right choice. */
    public Choice rightChoice() {
        return choices.stream().filter(c -> pick(c).right()).findFirst().orElseThrow();
    }
}
