package org.fumewarden.assessment;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.fumewarden.exposure.Appraisal;
import org.fumewarden.exposure.Screening;
import org.fumewarden.model.Exposure;
import org.fumewarden.model.Input;
import org.fumewarden.task.Reading;

/**
 * What came of one reading.
 *
 * @param limit the lowest limit of the same averaging time, in the unit of the reading; empty when none is held
 * @param inputs the exposure, or the open question in its place, and everything that weakens it
 * @param appraisal what samples say; a verdict in it counts only when there is a limit
 * @param screening the estimate of a room model
 */
public record Assessment(
        Reading reading,
        OptionalDouble limit,
        List<Input> inputs,
        Optional<Appraisal> appraisal,
        Optional<Screening> screening) {
    public Assessment {
        inputs = List.copyOf(inputs);
    }

    /** The same with more inputs. */
    Assessment with(List<Input> more) {
        return new Assessment(
                reading, limit, Stream.concat(inputs.stream(), more.stream()).toList(), appraisal, screening);
    }

    /** The level that drives the advice, when there is one. */
    public Optional<Exposure> exposure() {
        return inputs.stream()
                .filter(Exposure.class::isInstance)
                .map(Exposure.class::cast)
                .findFirst();
    }
}
