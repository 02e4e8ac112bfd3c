package org.fumewarden.shift;

import java.util.List;
import java.util.Optional;
import org.fumewarden.endurance.ChangeTime;
import org.fumewarden.endurance.CurvePoint;
import org.fumewarden.model.Reckoning;

/**
 * The change time of the filter for one gas.
 *
 * @param agent id
 * @param name of the agent
 * @param filter what holds it, as marked, empty when nothing does
 * @param time the change time with its basis, or why there is none
 * @param curve breakthrough by the adsorption model, empty where the model has none
 * @param allowedShare exit over inlet concentration that is allowed
 * @param remarks what the time rests on besides
 */
public record GasLife(
        String agent,
        String name,
        String filter,
        Reckoning<ChangeTime> time,
        List<CurvePoint> curve,
        Optional<Double> allowedShare,
        List<String> remarks) {
    public GasLife {
        curve = List.copyOf(curve);
        remarks = List.copyOf(remarks);
    }
}
