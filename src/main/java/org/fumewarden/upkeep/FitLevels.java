package org.fumewarden.upkeep;

import java.math.BigDecimal;
import java.util.Locale;
import java.util.Optional;
import org.fumewarden.codes.Fault;

/**
 * What a code asks of a fit test.
 *
 * @param half lowest fit factor of a half mask or filtering facepiece in a quantitative test
 * @param full lowest fit factor of a full face mask in a quantitative test
 * @param qualitativeFull highest multiple of the limit that a qualitative test of a full face mask serves; 0 where such a test
 *     is not accepted, empty where the tables do not say
 * @param exercises how many exercises the code judges one by one, the lowest deciding; empty where the factor over all decides
 * @param clause source and clause of the fit factors
 * @param qualitativeClause source and clause of what qualitative tests serve
 */
public record FitLevels(
        BigDecimal half,
        BigDecimal full,
        Optional<BigDecimal> qualitativeFull,
        Optional<BigDecimal> exercises,
        String clause,
        String qualitativeClause) {
    /** A test as the code judges it, with the sentence that says why. */
    public record Judgement(FitTest test, String says) {}

    /**
     * Judges a test, never milder than the person who made it.
     *
     * @param negativeMode true for a mask with a blower or supplied air, which is tested without it: either method is accepted then
     * @throws StoreException when the face decides and was not given, when a figure cannot be read, or when the code judges each
     *     exercise and a passed test does not say what came out of each
     */
    public Judgement judged(FitTest test, boolean negativeMode) {
        if (qualitative(test) && test.fitFactor().isPresent()) {
            throw StoreException.about(
                    "method",
                    "is \"" + test.method() + "\", and fit-factor is given: a qualitative test measures none.",
                    "write method=quantitative, or leave fit-factor out.");
        }
        if (test.result() == Result.FAILED && test.fitFactor().isEmpty()) {
            return new Judgement(test, "Failed as entered.");
        }
        if (exercises.isEmpty() || test.result() == Result.FAILED) {
            return Exercises.sayFailed(test.exercises())
                    ? failed(test, "an exercise failed", clause)
                    : whole(test, negativeMode);
        }
        int asked = exercises.orElseThrow().intValue();
        return qualitative(test) ? tasted(test, asked) : measured(test, asked);
    }

    private static boolean qualitative(FitTest test) {
        return test.method().toLowerCase(Locale.ROOT).contains("qualitative");
    }

    private Judgement whole(FitTest test, boolean negativeMode) {
        return test.fitFactor().isPresent() ? byFactor(test) : byMethod(test, negativeMode);
    }

    /** Each exercise is judged alone: too few of them, one that failed or one below the level fails the test. */
    private Judgement measured(FitTest test, int asked) {
        Exercises done = Exercises.read(test.exercises());
        if (done.failed().isPresent()) {
            return failed(test, "the exercise \"" + done.failed().get().name() + "\" failed", clause);
        }
        if (!done.measured()) {
            Judgement over = test.fitFactor().isPresent() ? byFactor(test) : null;
            if (over != null && over.test().result() == Result.FAILED) {
                return over;
            }
            throw StoreException.about(
                    "exercises",
                    "does not give a fit factor for each exercise: each of " + asked + " is judged alone [" + clause
                            + "].",
                    "write the figure of each: exercises=\"normal breathing: 2500; deep breathing: 2600; ...\".");
        }
        Exercises.Exercise lowest = done.lowest().orElseThrow();
        BigDecimal counts = lowest.factor().orElseThrow();
        Judgement judged = byFactor(test.judged(
                test.result(),
                test.face(),
                Optional.of(test.fitFactor().map(counts::min).orElse(counts)),
                test.passFactor(),
                ""));
        if (done.done() < asked) {
            return few(judged.test(), done.done(), asked);
        }
        String name = lowest.name().isEmpty() ? "number " + (done.each().indexOf(lowest) + 1) : lowest.name();
        return new Judgement(
                judged.test(),
                judged.says() + " The lowest exercise decides: " + name + ", " + counts.toPlainString() + ".");
    }

    /** A test by taste or smell: who passed it tasted nothing in any exercise. */
    private Judgement tasted(FitTest test, int asked) {
        if (test.exercises().isEmpty()) {
            Judgement judged = byMethod(test, false);
            return new Judgement(
                    judged.test(),
                    judged.says() + " No outcome for each exercise is given; " + asked + " must be passed.");
        }
        if (Exercises.all(test.exercises())) {
            return byMethod(test, false);
        }
        Exercises done = Exercises.read(test.exercises());
        if (done.failed().isPresent()) {
            return failed(test, "the exercise \"" + done.failed().get().name() + "\" failed", qualitativeClause);
        }
        if (done.each().size() == 1 && !done.told()) {
            throw StoreException.about(
                    "exercises",
                    "is \"" + test.exercises() + "\", which does not say what came out of each of " + asked + ".",
                    "write the outcome of each: exercises=\"normal breathing: passed; deep breathing: passed; ...\".");
        }
        return done.done() < asked ? few(test, done.done(), asked) : byMethod(test, false);
    }

    private Judgement few(FitTest test, int done, int asked) {
        return failed(
                test,
                "only " + done + (done == 1 ? " exercise is given; " : " exercises are given; ") + asked
                        + " must be passed",
                clause);
    }

    private static Judgement failed(FitTest test, String why, String clause) {
        return new Judgement(
                test.judged(Result.FAILED, test.face(), test.fitFactor(), test.passFactor(), why),
                "Failed: " + why + " [" + clause + "].");
    }

    private Judgement byFactor(FitTest test) {
        String face = test.face();
        BigDecimal measured = test.fitFactor().orElseThrow();
        if (face.isEmpty() && measured.compareTo(half) >= 0 && measured.compareTo(full) < 0) {
            throw StoreException.about(
                            "face",
                            "is not given, and a fit factor of " + measured.toPlainString()
                                    + " is enough for a half mask only: " + clause + " asks for " + half.toPlainString()
                                    + " or, full face, "
                                    + full.toPlainString() + ".",
                            "write face=half or face=full.")
                    .as(Fault.MISSING);
        }
        BigDecimal asked = face.equals("full") || face.isEmpty() && measured.compareTo(full) >= 0 ? full : half;
        BigDecimal level = test.passFactor().map(asked::max).orElse(asked);
        boolean enough = measured.compareTo(level) >= 0;
        return new Judgement(
                test.judged(test.result(), face, test.fitFactor(), Optional.of(level), ""),
                "Fit factor " + measured.toPlainString() + (enough ? " reaches " : " is below ") + level.toPlainString()
                        + ", the least for this mask [" + clause + "]."
                        + (enough && test.result() == Result.FAILED ? " It counts as failed, as entered." : ""));
    }

    private Judgement byMethod(FitTest test, boolean negativeMode) {
        if (!qualitative(test)) {
            throw StoreException.about(
                            "fit-factor",
                            "is not given, and the method is not said to be qualitative.",
                            "write the fit-factor=... of a quantitative test, or method=\"qualitative, ...\".")
                    .as(Fault.MISSING);
        }
        boolean capped =
                qualitativeFull.filter(c -> c.signum() == 0 || !negativeMode).isPresent();
        if (!capped || test.face().equals("half")) {
            return new Judgement(
                    test, "Qualitative test: " + test.result().key() + " as entered [" + qualitativeClause + "].");
        }
        if (test.face().isEmpty()) {
            throw StoreException.about(
                            "face",
                            "is not given, and a qualitative test is not enough for every full face mask ["
                                    + qualitativeClause + "].",
                            "write face=half or face=full.")
                    .as(Fault.MISSING);
        }
        if (qualitativeFull.orElseThrow().signum() == 0) {
            return new Judgement(
                    test.judged(
                            Result.FAILED,
                            test.face(),
                            test.fitFactor(),
                            test.passFactor(),
                            "qualitative test of a full face mask"),
                    "A qualitative test is not accepted for a full face mask; a fit factor of " + full.toPlainString()
                            + " must be measured [" + qualitativeClause + "].");
        }
        return new Judgement(
                test,
                "A qualitative test is enough for this mask up to "
                        + qualitativeFull.get().toPlainString()
                        + " times the limit only; beyond, a fit factor of " + full.toPlainString()
                        + " must be measured [" + qualitativeClause
                        + "].");
    }
}
