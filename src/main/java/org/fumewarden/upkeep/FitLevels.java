package org.fumewarden.upkeep;

import java.math.BigDecimal;
import java.util.Locale;
import java.util.Optional;

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
    public record Judgement(Details.FitTest test, String says) {}

    /**
     * Judges a test, never milder than the person who made it.
     *
     * @param face {@code half} or {@code full}; empty when nobody said, which is accepted only where it changes nothing
     * @throws StoreException when the face decides and was not given
     */
    public Judgement judged(Details.FitTest test, String face) {
        if (!face.isEmpty() && !face.equals("half") && !face.equals("full")) {
            throw StoreException.refused(
                    "face cannot be \"" + face + "\".", "half (filtering facepieces included) or full.");
        }
        return exercises.isPresent() ? byExercise(test, face) : whole(test, face);
    }

    private Judgement whole(Details.FitTest test, String face) {
        return test.fitFactor().isPresent() ? byFactor(test, face) : byMethod(test, face);
    }

    /** Each exercise is judged alone: too few of them, one that failed or one below the level fails the test. */
    private Judgement byExercise(Details.FitTest test, String face) {
        Exercises done = Exercises.read(test.exercises());
        int asked = exercises.orElseThrow().intValue();
        if (done.each().isEmpty()) {
            Judgement judged = whole(test, face);
            String taken = test.fitFactor().isPresent()
                    ? " No factor for each exercise is given: the fit factor is taken as the lowest of " + asked + "."
                    : " No outcome for each exercise is given; " + asked + " are asked for.";
            return new Judgement(judged.test(), judged.says() + taken);
        }
        Optional<Exercises.Exercise> lowest = done.lowest();
        Details.FitTest counted =
                lowest.map(e -> withFactor(test, e.factor().orElseThrow())).orElse(test);
        Judgement judged = whole(counted, face);
        String which = lowest.map(e -> " The lowest exercise decides: " + e.name() + ", "
                        + e.factor().orElseThrow().toPlainString() + ".")
                .orElse("");
        if (done.each().size() < asked) {
            return new Judgement(
                    with(judged.test(), Result.FAILED, judged.test().passFactor()),
                    "Only " + done.each().size() + " exercises are given; " + asked + " must be passed [" + clause
                            + "]." + which);
        }
        return done.failed()
                .map(e -> new Judgement(
                        with(judged.test(), Result.FAILED, judged.test().passFactor()),
                        "The exercise \"" + e.name() + "\" failed; each of " + asked + " must be passed [" + clause
                                + "]."))
                .orElse(new Judgement(judged.test(), judged.says() + which));
    }

    private static Details.FitTest withFactor(Details.FitTest test, BigDecimal lowest) {
        BigDecimal counts = test.fitFactor().map(lowest::min).orElse(lowest);
        return new Details.FitTest(
                test.result(),
                test.model(),
                test.method(),
                test.exercises(),
                Optional.of(counts),
                test.passFactor(),
                test.recording(),
                test.testEquipment());
    }

    private Judgement byFactor(Details.FitTest test, String face) {
        BigDecimal measured = test.fitFactor().orElseThrow();
        if (face.isEmpty() && measured.compareTo(half) >= 0 && measured.compareTo(full) < 0) {
            throw StoreException.refused(
                    "face is not given, and a fit factor of " + measured.toPlainString()
                            + " is enough for a half mask only: " + clause + " asks for " + half.toPlainString()
                            + " or, full face, "
                            + full.toPlainString() + ".",
                    "write face=half or face=full.");
        }
        BigDecimal asked = face.equals("full") || face.isEmpty() && measured.compareTo(full) >= 0 ? full : half;
        BigDecimal level = test.passFactor().map(asked::max).orElse(asked);
        boolean enough = measured.compareTo(level) >= 0;
        return new Judgement(
                with(test, test.result(), Optional.of(level)),
                "Fit factor " + measured.toPlainString() + (enough ? " reaches " : " is below ") + level.toPlainString()
                        + ", the least for this mask [" + clause + "].");
    }

    private Judgement byMethod(Details.FitTest test, String face) {
        if (!test.method().toLowerCase(Locale.ROOT).contains("qualitative")) {
            if (test.result() == Result.FAILED) {
                return new Judgement(test, "Failed as entered.");
            }
            throw StoreException.refused(
                    "fit-factor is not given, and the method is not said to be qualitative.",
                    "fit-factor=... of a quantitative test, or method=\"qualitative, ...\".");
        }
        if (qualitativeFull.isEmpty() || face.equals("half")) {
            return new Judgement(
                    test, "Qualitative test: " + test.result().key() + " as entered [" + qualitativeClause + "].");
        }
        if (face.isEmpty()) {
            throw StoreException.refused(
                    "face is not given, and a qualitative test is not enough for every full face mask ["
                            + qualitativeClause + "].",
                    "write face=half or face=full.");
        }
        if (qualitativeFull.get().signum() == 0) {
            return new Judgement(
                    with(test, Result.FAILED, test.passFactor()),
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

    private static Details.FitTest with(Details.FitTest test, Result result, Optional<BigDecimal> level) {
        return new Details.FitTest(
                result,
                test.model(),
                test.method(),
                test.exercises(),
                test.fitFactor(),
                level,
                test.recording(),
                test.testEquipment());
    }
}
