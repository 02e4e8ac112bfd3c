package org.fumewarden.shift;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.fumewarden.model.Reckoning;
import org.fumewarden.model.Soundness;

/**
 * The stretches of wear in a shift.
 *
 * @param work minutes of each
 * @param breaks minutes between them
 */
record Stretches(List<Double> work, List<Double> breaks) {
    private static final int MOST = 96;

    double total() {
        return work.stream().mapToDouble(Double::doubleValue).sum();
    }

    /** Wear of the whole task, cut by the longest wear without a break; the shift itself where the task gives no time. */
    static Reckoning<Stretches> of(UnitAnswers given) {
        double total = given.number("time-on-task").orElse(given.number("shift").orElse(0));
        if (!(total > 0)) {
            return given.<Stretches>missing("The shift", "task.time-on-task")
                    .orElseGet(() -> Reckoning.refuse(
                            Soundness.INVALID_VALUE, "The task lasts 0 min.", "Write how long it lasts."));
        }
        double longest = given.number("wear-time").orElse(total);
        int count = (int) Math.min(MOST, Math.max(1, Math.ceil(total / Math.max(1, longest))));
        List<Double> work = new ArrayList<>(Collections.nCopies(count, total / count));
        Optional<Double> pause = given.number("break-length").stream().boxed().findFirst();
        return Reckoning.of(new Stretches(work, Collections.nCopies(count - 1, pause.orElse(0.0))));
    }
}
