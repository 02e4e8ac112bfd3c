package org.fumewarden.endurance;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.fumewarden.model.Reckoned;
import org.fumewarden.model.Reckoning;
import org.fumewarden.model.Refused;
import org.fumewarden.model.Soundness;

/**
 * Breakthrough time of an organic vapour in a bed of activated carbon.
 *
 * <p>Wheeler-Jonas equation with the Dubinin-Radushkevich capacity and the rate of Wood (Am. Ind. Hyg. Assoc. J. 55
 * (1994) 11-15). Reproduces the times that OSHA publishes from it within 3.4 %, at 1 % exit
 * never longer but up to 7 % shorter. Ordinary organic vapours only.
 */
public final class AdsorptionModel {
    private static final double ICE_POINT = 273.15;
    private static final double PARTS = 1e-6;

    private final AdsorptionConstants constants;
    private final AdsorptionRange range;

    /** A model with the coefficients of one table. */
    public AdsorptionModel(AdsorptionConstants constants, AdsorptionRange range) {
        this.constants = constants;
        this.range = range;
    }

    /** Grams of vapour that one gram of carbon holds in balance with this air. */
    public double capacity(Vapour vapour, double ppm, double temperature) {
        double kelvin = temperature + ICE_POINT;
        double pressure = ppm * PARTS * constants.standardPressure();
        double potential = constants.gasConstant() * kelvin * Math.log(pressure / vapour.saturation(temperature));
        double exponent = constants.affinity()
                * constants.microporeVolume()
                * Math.pow(vapour.polarizability(), constants.polarizabilityExponent())
                * potential
                * potential;
        return constants.microporeVolume() * vapour.density() * Math.exp(-exponent);
    }

    /**
     * Minutes until the exit reaches a fraction of the inlet, by the bare equation; zero or less means at once.
     *
     * @param exitFraction exit over inlet concentration, above 0 and below 1
     */
    public double minutes(
            Vapour vapour, CarbonBed bed, double ppm, double exitFraction, double litresPerMinute, double temperature) {
        double held = capacity(vapour, ppm, temperature);
        double inlet = gramsPerCubicCentimetre(vapour, ppm, temperature);
        double logarithm = Math.log((1 - exitFraction) / exitFraction);
        double perRate = bed.resistanceToMassTransfer(litresPerMinute, constants.velocityOffset())
                * (constants.rateOffset()
                        + (constants.rateBase() - constants.rateSlope() * logarithm) / vapour.polarizability());
        return held * bed.carbon() / (inlet * litresPerMinute * 1e3) - held * perRate / inlet * logarithm;
    }

    /** How the filter holds this vapour in use, in moles, compared with its test gas in the test; at most as well. */
    public HeldLike heldLike(Vapour vapour, double ppm, double temperature, Vapour testGas, TestCapacity test) {
        double used = capacity(vapour, Math.max(ppm, range.lowestPpm()), temperature) / vapour.molarMass();
        double tested = capacity(testGas, test.ppm(), test.temperature()) / testGas.molarMass();
        double share = Math.min(1, used / tested);
        boolean shown = vapour.modelHolds() && vapour.boilingPoint() > range.lowestBoilingPoint();
        return new HeldLike(
                shown,
                shown ? share : 0,
                true,
                range.lowestPpm(),
                String.format(Locale.ROOT, "held at %.0f %% of the test gas by the adsorption isotherm", share * 100));
    }

    /** The bound with its allowance, or why the model does not hold. */
    public Reckoning<TimeBound> bound(Vapour vapour, CarbonBed bed, GasUse use) {
        Optional<Reckoning<TimeBound>> refusal = use.<TimeBound>refusal().or(() -> notHeld(vapour));
        if (refusal.isPresent()) {
            return refusal.get();
        }
        List<String> remarks = new ArrayList<>();
        double ppm = Math.max(use.ppm(), range.lowestPpm());
        if (ppm > use.ppm()) {
            remarks.add("Below the published range: the time at " + WrittenNumbers.plain(ppm) + " ppm is used.");
        }
        if (use.humidity() > range.plainHumidity()) {
            remarks.add("Above " + WrittenNumbers.plain(range.plainHumidity())
                    + " % humidity carbon may hold less; the published table corrects from "
                    + WrittenNumbers.plain(range.highestHumidity()) + " % on. Change early.");
        }
        double fraction = Math.min(use.exitPpm() / ppm, range.highestExitFraction());
        Reckoning<TimeBound> time =
                time(vapour, bed, use, ppm, Math.max(fraction, range.lowestExitFraction()), remarks);
        if (!(time instanceof Reckoned<TimeBound> reckoned)) {
            return time;
        }
        return outside(use, fraction)
                .<Reckoning<TimeBound>>map(refused -> new Refused<>(
                        refused.status(), refused.found(), refused.remedy(), Optional.of(reckoned.result())))
                .orElse(time);
    }

    private Reckoning<TimeBound> time(
            Vapour vapour, CarbonBed bed, GasUse use, double ppm, double fraction, List<String> remarks) {
        double temperature =
                Math.min(Math.max(use.temperature(), range.lowestTemperature()), range.highestTemperature());
        double minutes =
                minutes(vapour, bed, ppm, fraction, use.flow().litresPerMinute(), temperature) / range.worstOverrun();
        if (!(minutes > 0)) {
            return Reckoning.refuse(
                    Soundness.BREAKS_THROUGH_AT_ONCE,
                    "The bed is too thin for " + WrittenNumbers.plain(use.flow().litresPerMinute())
                            + " L/min: vapour would come through from the first minute.",
                    "Use a larger filter or less flow per filter.");
        }
        String says = String.format(
                Locale.ROOT,
                "Model for %s: %s ppm at %s L/min through %s g of carbon at %s C, until %s %% comes through."
                        + " The time is divided by %s for the model's worst error.",
                vapour.name(),
                WrittenNumbers.plain(ppm),
                WrittenNumbers.plain(use.flow().litresPerMinute()),
                WrittenNumbers.plain(bed.carbon()),
                WrittenNumbers.plain(temperature),
                WrittenNumbers.plain(fraction * 100),
                WrittenNumbers.plain(range.worstOverrun()));
        return Reckoning.of(new TimeBound(BoundKind.ADSORPTION_MODEL, minutes, says, true), remarks);
    }

    /** Points of the breakthrough curve between the published exit fractions, for a plot. */
    public List<CurvePoint> curve(
            Vapour vapour, CarbonBed bed, double ppm, double litresPerMinute, double temperature, int points) {
        List<CurvePoint> curve = new ArrayList<>();
        double ratio = range.highestExitFraction() / range.lowestExitFraction();
        for (int i = 0; i < points; i++) {
            double fraction = range.lowestExitFraction() * Math.pow(ratio, i / (double) Math.max(1, points - 1));
            double minutes = minutes(vapour, bed, ppm, fraction, litresPerMinute, temperature) / range.worstOverrun();
            if (minutes > 0) {
                curve.add(new CurvePoint(minutes, fraction));
            }
        }
        return List.copyOf(curve);
    }

    private double gramsPerCubicCentimetre(Vapour vapour, double ppm, double temperature) {
        double molarVolume = constants.molarVolumeAtZero() * (temperature + ICE_POINT) / ICE_POINT;
        return ppm * PARTS * vapour.molarMass() / molarVolume / 1e3;
    }

    private Optional<Refused<TimeBound>> notHeld(Vapour vapour) {
        if (!(vapour.boilingPoint() > range.lowestBoilingPoint())) {
            return refused(
                    Soundness.LOW_BOILER,
                    vapour.name() + " boils at " + WrittenNumbers.plain(vapour.boilingPoint()) + " C, not above "
                            + WrittenNumbers.plain(range.lowestBoilingPoint())
                            + " C.",
                    "Use an AX filter by its group, or supplied air.");
        }
        if (!vapour.modelHolds()) {
            return refused(
                    Soundness.MODEL_DOES_NOT_HOLD,
                    "Measurements with " + vapour.name() + " were far shorter than the model.",
                    "Use supplied air.");
        }
        return Optional.empty();
    }

    private Optional<Refused<TimeBound>> outside(GasUse use, double fraction) {
        if (use.humidity() > range.highestHumidity()) {
            return refused(
                    Soundness.TOO_HUMID,
                    WrittenNumbers.plain(use.humidity()) + " % relative humidity is above "
                            + WrittenNumbers.plain(range.highestHumidity())
                            + " %, where water takes the place of the vapour.",
                    "Ask the manufacturer for data in humid air.");
        }
        if (use.temperature() < range.lowestTemperature() || use.temperature() > range.highestTemperature()) {
            return refused(
                    Soundness.OUTSIDE_TEMPERATURE,
                    WrittenNumbers.plain(use.temperature()) + " C is outside "
                            + WrittenNumbers.plain(range.lowestTemperature()) + " to "
                            + WrittenNumbers.plain(range.highestTemperature()) + " C.",
                    "Ask the manufacturer for data on it.");
        }
        if (use.ppm() > range.highestPpm()) {
            return refused(
                    Soundness.OUTSIDE_PUBLISHED_RANGE,
                    WrittenNumbers.plain(use.ppm()) + " ppm is above the " + WrittenNumbers.plain(range.highestPpm())
                            + " ppm the model was published to.",
                    "Use supplied air.");
        }
        if (fraction < range.lowestExitFraction()) {
            return refused(
                    Soundness.EXIT_LIMIT_TOO_LOW,
                    "Only " + WrittenNumbers.plain(fraction * 100)
                            + " % may come through; the model was published from "
                            + WrittenNumbers.plain(range.lowestExitFraction() * 100) + " % on.",
                    "Use supplied air.");
        }
        return Optional.empty();
    }

    private static Optional<Refused<TimeBound>> refused(Soundness reason, String found, String remedy) {
        return Optional.of(new Refused<>(reason, found, remedy, Optional.empty()));
    }
}
