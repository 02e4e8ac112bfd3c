package org.fumewarden.endurance;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fumewarden.model.Reckoning;
import org.fumewarden.model.Refused;
import org.fumewarden.model.Soundness;

/**
 * A breakthrough time measured or stated by the maker for this agent and filter.
 *
 * @param minutes until the exit reached {@code exitPpm}
 * @param ppm before the filter
 * @param exitPpm behind it
 * @param litresPerMinute through the filter
 * @param humidityFrom driest air for which it holds, percent; air that reacts on the filter may need moisture
 * @param humidity most humid air for which it holds, percent
 * @param temperature degrees Celsius
 * @param document where it stands
 */
public record MeasuredBreakthrough(
        double minutes,
        double ppm,
        double exitPpm,
        double litresPerMinute,
        double humidityFrom,
        double humidity,
        double temperature,
        String document) {
    private static final double DECADE = 10;

    /**
     * The measured time where the use is no harder in any respect; it never gets longer for an easier use.
     *
     * <p>More gas than measured shortens it in inverse proportion, for a vapour that carbon adsorbs and within ten times
     * the measured concentration: the OSHA static table falls 7.5-fold for toluene and 8.4-fold for ethylbenzene from 50
     * to 500 ppm. Any other harder use is refused, and the refusal still hands over the shortened time.
     *
     * @param adsorbed true for a vapour that carbon holds by adsorption, false for a gas bound by reaction
     */
    public Reckoning<TimeBound> bound(GasUse use, boolean adsorbed) {
        Optional<Reckoning<TimeBound>> refusal = use.<TimeBound>refusal().or(() -> new Inputs()
                .positive("The measured time", minutes)
                .positive("The measured concentration", ppm)
                .positive("The measured flow", litresPerMinute)
                .<TimeBound>refusal());
        if (refusal.isPresent()) {
            return refusal.get();
        }
        boolean scales = adsorbed && use.ppm() <= ppm * DECADE;
        List<String> harder = harder(use, adsorbed, scales);
        double share = Math.min(1, ppm / use.ppm())
                * Math.min(1, litresPerMinute / use.flow().litresPerMinute());
        TimeBound bound = new TimeBound(BoundKind.MEASURED, minutes * share, says(use), true);
        return harder.isEmpty()
                ? Reckoning.of(bound)
                : new Refused<>(
                        Soundness.OUTSIDE_TABLE,
                        "The use is harder than the measurement in " + document + " in " + String.join(", ", harder)
                                + ".",
                        "Use another line of it.",
                        Optional.of(bound));
    }

    private List<String> harder(GasUse use, boolean adsorbed, boolean scales) {
        List<String> harder = new ArrayList<>();
        if (use.ppm() > ppm && !scales) {
            harder.add("concentration");
        }
        if (use.exitPpm() < exitPpm) {
            harder.add("the limit behind the filter");
        }
        if (use.flow().litresPerMinute() > litresPerMinute) {
            harder.add("flow through one filter");
        }
        if (use.humidity() > humidity) {
            harder.add("humidity");
        }
        if (!adsorbed && use.humidity() < humidityFrom) {
            harder.add("dryness of the air");
        }
        if (use.temperature() > temperature) {
            harder.add("warmth");
        }
        return harder;
    }

    private String says(GasUse use) {
        return "Breakthrough came after " + WrittenNumbers.plain(minutes) + " min at " + WrittenNumbers.plain(ppm)
                + " ppm and "
                + WrittenNumbers.plain(litresPerMinute) + " L/min (" + document + ")"
                + (use.ppm() > ppm
                        ? ", shortened in inverse proportion to " + WrittenNumbers.plain(use.ppm()) + " ppm here."
                        : ". The concentration here is no higher, so the time is taken as it stands.");
    }
}
