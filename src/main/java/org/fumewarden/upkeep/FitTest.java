package org.fumewarden.upkeep;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;

/**
 * A fit test of one person in one model of mask.
 *
 * @param face {@code half} or {@code full}, as the test was judged; empty when nobody said
 * @param method qualitative or quantitative, and the agent or counter used
 * @param recording where the strip chart or other recording is kept
 * @param remarks why it failed among them
 */
public record FitTest(
        Result result,
        String model,
        String face,
        String method,
        String exercises,
        Optional<BigDecimal> fitFactor,
        Optional<BigDecimal> passFactor,
        String recording,
        String testEquipment,
        String remarks)
        implements Details {
    public FitTest {
        model = Given.needed("model", model);
        face = Given.face(face);
        method = Given.needed("method", method);
        exercises = Given.optional("exercises", exercises);
        fitFactor = Given.amount("fit-factor", fitFactor);
        passFactor = Given.amount("pass-factor", passFactor);
        recording = Given.optional("recording", recording);
        testEquipment = Given.optional("test-equipment", testEquipment);
        remarks = Given.optional("remarks", remarks);
        result = Flows.below(fitFactor, passFactor) ? Result.FAILED : Result.ofCheck("result", result);
    }

    @Override
    public String serves() {
        return servesFor(model);
    }

    @Override
    public String whyFailed() {
        if (result != Result.FAILED) {
            return "";
        }
        String factor = Flows.below(fitFactor, passFactor)
                ? "fit factor " + fitFactor.orElseThrow().toPlainString() + " is below "
                        + passFactor.orElseThrow().toPlainString()
                : "";
        String why = Flows.reasons(factor, List.of(), remarks);
        return why.isEmpty() && !exercises.isEmpty() ? "exercises: " + exercises : why;
    }

    /** The same test as it was judged. */
    FitTest judged(Result result, String face, Optional<BigDecimal> factor, Optional<BigDecimal> level, String why) {
        boolean unsaid = !why.isEmpty() && !remarks.contains(why);
        return new FitTest(
                result,
                model,
                face,
                method,
                exercises,
                factor,
                level,
                recording,
                testEquipment,
                unsaid && !remarks.isEmpty() ? remarks + "; " + why : unsaid ? why : remarks);
    }

    /** What a fit test in a model serves: a test holds for that model only. */
    static String servesFor(String model) {
        return "fit-test/" + model.strip();
    }
}
