package org.fumewarden.assessment;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.fumewarden.exposure.Screening;
import org.fumewarden.model.Exposure;
import org.fumewarden.model.Input;
import org.fumewarden.task.Reading;
import org.fumewarden.task.Task;

/** The exposure of a room model: the 95th percentile, marked as estimated, with the question to measure it. */
final class RoomAssessment {
    private RoomAssessment() {}

    static Assessment of(Reading.RoomModel model, Task task, ExposureTables figures) {
        RoomEstimate.Result result = RoomEstimate.of(task, figures, model.agent());
        OptionalDouble limit = figures.lowestLimit(model.agent(), model.averaging(), result.unit()).stream()
                .mapToDouble(BigDecimal::doubleValue)
                .findFirst();
        Optional<Double> governing =
                result.screening().map(Screening::governing).flatMap(o -> o.value());
        List<Input> inputs = new ArrayList<>();
        if (governing.isEmpty()) {
            inputs.add(Assessor.open(model));
            result.lacks().forEach(lack -> inputs.add(Assessor.note(model, "no-estimate", lack)));
            return new Assessment(model, limit, inputs, Optional.empty(), Optional.empty());
        }
        inputs.add(new Exposure(
                model.agent(),
                model.averaging(),
                ExposureTables.level(governing.get()),
                result.unit(),
                "95th percentile of an estimate from published exposures",
                true,
                model.path()));
        inputs.add(Assessor.note(model, "estimate", result.screening().get().sentence()));
        inputs.add(Assessor.note(model, "measure-this", Screening.QUESTION));
        return new Assessment(model, limit, inputs, Optional.empty(), result.screening());
    }
}
