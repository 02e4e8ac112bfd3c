package org.fumewarden.shift;

import java.util.List;
import java.util.OptionalDouble;
import org.fumewarden.endurance.AirflowVerdict;
import org.fumewarden.endurance.EnduranceCurve;
import org.fumewarden.endurance.FilterCadence;
import org.fumewarden.endurance.RunTime;
import org.fumewarden.endurance.ShadeAdvice;
import org.fumewarden.endurance.ShiftPlan;
import org.fumewarden.model.Reckoning;

/**
 * One shift with the unit in use.
 *
 * @param air what the unit delivers against what the wearer breathes
 * @param gases one for each gas with a level
 * @param dust milligrams on the filter set over the shift
 * @param cadence of the particle filter and the pre-filter
 * @param run from the fitted pack as it is now
 * @param plan of the shift, refused when any part of it is
 * @param curves the user's own, empty without
 * @param wearHours of the shift
 * @param filterNow where the filter stands on the curves, as they tell it
 * @param eyes shade of the eye filter
 * @param remarks what was assumed on the safe side
 */
public record ShiftSheet(
        Reckoning<AirflowVerdict> air,
        List<GasLife> gases,
        Reckoning<Double> dust,
        Reckoning<FilterCadence> cadence,
        Reckoning<RunTime> run,
        Reckoning<ShiftPlan> plan,
        List<EnduranceCurve> curves,
        OptionalDouble wearHours,
        OptionalDouble filterNow,
        ShadeAdvice eyes,
        List<String> remarks) {
    public ShiftSheet {
        gases = List.copyOf(gases);
        curves = List.copyOf(curves);
        remarks = List.copyOf(remarks);
    }

    /** True when there is a plan, it lasts the shift, and nothing that bears on safety was refused. */
    public boolean settled() {
        return plan.value().filter(ShiftPlan::lasts).isPresent()
                && air.value()
                        .filter(a -> a.adequacy() == AirflowVerdict.Adequacy.COVERS_PEAKS)
                        .isPresent()
                && gases.stream().allMatch(gas -> gas.time().value().isPresent());
    }
}
