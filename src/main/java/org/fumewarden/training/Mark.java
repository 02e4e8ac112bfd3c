package org.fumewarden.training;

import java.util.Optional;
import java.util.function.UnaryOperator;
import org.fumewarden.advice.Reason;

/**
 * A marked answer.
 *
 * @param given what was answered, in words
 * @param mistake behind a wrong answer
 * @param says what the trainer says besides; empty when the mistake says it all
 * @param because the sentence of the advice
 * @param clause where it stands; empty when nothing is cited
 * @param instead what would have been right, or the change that would have made it right; empty for a right answer
 */
public record Mark(
        Verdict verdict,
        String given,
        Optional<Mistake> mistake,
        String says,
        String because,
        String clause,
        String instead) {

    static Mark right(String given) {
        return new Mark(Verdict.RIGHT, given, Optional.empty(), "", "", "", "");
    }

    static Mark wrong(String given, Mistake mistake, String instead) {
        return new Mark(Verdict.WRONG, given, Optional.of(mistake), "", "", "", instead);
    }

    /** An answer that nobody can read as one. */
    static Mark unread(String given, String says) {
        return new Mark(Verdict.UNREAD, given, Optional.empty(), says, "", "", "");
    }

    /** A question that was left out. */
    public static Mark skipped() {
        return new Mark(Verdict.SKIPPED, "", Optional.empty(), "", "", "", "");
    }

    Mark because(Reason reason) {
        return because(reason.says(), reason.source() + " " + reason.clause());
    }

    Mark because(Optional<Reason> reason) {
        return reason.map(this::because).orElse(this);
    }

    Mark because(String sentence, String where) {
        return new Mark(verdict, given, mistake, says, sentence, where, instead);
    }

    Mark saying(String more) {
        return new Mark(verdict, given, mistake, more, because, clause, instead);
    }

    Mark instead(String other) {
        return new Mark(verdict, given, mistake, says, because, clause, other);
    }

    Mark citing(UnaryOperator<String> told) {
        return new Mark(verdict, given, mistake, says, because, told.apply(clause), instead);
    }

    Mark of(String shown) {
        return new Mark(verdict, shown, mistake, says, because, clause, instead);
    }

    public boolean right() {
        return verdict == Verdict.RIGHT;
    }
}
