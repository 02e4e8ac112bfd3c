package org.fumewarden.endurance;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.fumewarden.model.Reckoning;
import org.fumewarden.model.Soundness;

/** Compares what a powered unit delivers with what its wearer breathes. */
public final class AirflowCheck {
    private AirflowCheck() {}

    /**
     * The comparison; refused, and the unit barred, when the flow is not measured or below the minimum design flow.
     *
     * @param measured flow by the unit's own indicator before this use, litres per minute, empty when not measured
     * @param minimumDesignFlow stated by the maker, litres per minute
     * @param work breathing at sea level
     * @param speech true when the wearer talks or shouts at work
     * @param breathingFactor of the altitude, 1 at sea level
     */
    public static Reckoning<AirflowVerdict> compare(
            OptionalDouble measured, double minimumDesignFlow, WorkRate work, boolean speech, double breathingFactor) {
        if (measured.isEmpty()) {
            return Reckoning.refuse(
                    Soundness.BELOW_MINIMUM_FLOW,
                    "The flow has not been measured, so nothing shows that it reaches the minimum design flow.",
                    "Always measure it with the indicator of the unit before use.");
        }
        double supply = measured.getAsDouble();
        Optional<Reckoning<AirflowVerdict>> bad = new Inputs()
                .notNegative("The measured flow in L/min", supply)
                .positive("The minimum design flow in L/min", minimumDesignFlow)
                .within("The breathing factor of the altitude", breathingFactor, 1, 3)
                .refusal();
        if (bad.isPresent()) {
            return bad.get();
        }
        if (supply < minimumDesignFlow) {
            return Reckoning.refuse(
                    Soundness.BELOW_MINIMUM_FLOW,
                    "The unit delivers " + WrittenNumbers.plain(supply) + " L/min, below its minimum design flow of "
                            + WrittenNumbers.plain(minimumDesignFlow)
                            + " L/min: do not use it.",
                    "Check filter, battery and hose, then measure again.");
        }
        return verdict(supply, work, speech, breathingFactor);
    }

    private static Reckoning<AirflowVerdict> verdict(double supply, WorkRate work, boolean speech, double factor) {
        BreathDemand demand = new BreathDemand(work, speech, factor);
        double peak = demand.peak();
        double mean = demand.mean();
        AirflowVerdict.Adequacy adequacy = supply >= peak
                ? AirflowVerdict.Adequacy.COVERS_PEAKS
                : supply >= mean
                        ? AirflowVerdict.Adequacy.PEAKS_ABOVE_SUPPLY
                        : AirflowVerdict.Adequacy.MEAN_ABOVE_SUPPLY;
        List<String> remarks = new ArrayList<>();
        remarks.add("More air never raises the protection factor.");
        work.atMostMinutes()
                .ifPresent(minutes -> remarks.add("No one keeps up " + work.id().replace('-', ' ')
                        + " work longer than " + WrittenNumbers.plain(minutes) + " min."));
        return Reckoning.of(new AirflowVerdict(adequacy, words(adequacy, supply, peak, work)), remarks);
    }

    private static String words(AirflowVerdict.Adequacy adequacy, double supply, double peak, WorkRate work) {
        String figures = WrittenNumbers.plain(supply) + " L/min supplied, peaks of about " + (long) Math.ceil(peak)
                + " L/min at " + work.id().replace('-', ' ') + " work.";
        return switch (adequacy) {
            case COVERS_PEAKS -> "The air flow covers the breathing: " + figures;
            case PEAKS_ABOVE_SUPPLY ->
                "Not enough air from this unit, the peaks of the breath may draw in outside air: " + figures
                        + " Lower the work rate, use a unit with more flow, or use an airline.";
            case MEAN_ABOVE_SUPPLY ->
                "Not enough air from this unit, the wearer breathes more than it delivers: " + figures
                        + " Lower the work rate, use a unit with more flow, or use an airline.";
        };
    }
}
