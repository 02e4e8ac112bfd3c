package org.fumewarden.endurance;

import java.util.List;
import java.util.Optional;
import org.fumewarden.model.Reckoned;
import org.fumewarden.model.Reckoning;
import org.fumewarden.model.Refused;
import org.fumewarden.model.Soundness;

/** What age, use and cold leave of a pack's rated energy. */
public final class PackShare {
    private PackShare() {}

    /** Share of the rated energy between full and empty, before charge and reserve are counted. */
    public static Reckoning<Span> of(Pack pack, PackRules rules, ColdTable cold, double temperature) {
        Optional<Reckoning<Span>> bad = new Inputs()
                .positive("The rated energy in Wh", pack.ratedWattHours())
                .within("The state of charge", pack.charge(), 0, 1)
                .within("The age in years", pack.ageYears(), 0, 30)
                .notNegative("The full cycles", pack.fullCycles())
                .within("The measured health", pack.measuredHealth().orElse(1), 0, 1)
                .refusal();
        if (bad.isPresent()) {
            return bad.get();
        }
        Reckoning<Span> byCold = cold.share(temperature);
        if (byCold instanceof Refused<Span>) {
            return byCold;
        }
        Span health = health(pack, rules);
        Span share = health.times(byCold.value().orElseThrow());
        return Reckoning.of(
                share,
                health.likely() < rules.endOfLife()
                        ? List.of("The pack has probably less than " + WrittenNumbers.plain(rules.endOfLife() * 100)
                                + " % of its capacity left: replace it.")
                        : List.of());
    }

    /** Watt hours down to the reserve; refused when the charge is not above it. */
    public static Reckoning<Span> usable(Pack pack, PackRules rules, ColdTable cold, double temperature) {
        Reckoning<Span> share = of(pack, rules, cold, temperature);
        if (!(share instanceof Reckoned<Span> reckoned)) {
            return share;
        }
        double above = pack.charge() - rules.reserve();
        if (above <= 0) {
            return Reckoning.refuse(
                    Soundness.BELOW_RESERVE,
                    "The pack is at " + WrittenNumbers.plain(pack.charge() * 100) + " %, not above the reserve of "
                            + WrittenNumbers.plain(rules.reserve() * 100)
                            + " %: do not start work.",
                    "Fit a charged pack.");
        }
        return Reckoning.of(reckoned.result().map(each -> each * pack.ratedWattHours() * above), reckoned.remarks());
    }

    private static Span health(Pack pack, PackRules rules) {
        if (pack.measuredHealth().isPresent()) {
            return Span.exactly(pack.measuredHealth().getAsDouble());
        }
        double low = Math.pow(rules.yearlyHoldFull(), pack.ageYears()) * worn(pack, rules, rules.cyclesShort());
        double high = Math.pow(rules.yearlyHoldPart(), pack.ageYears()) * worn(pack, rules, rules.cyclesLong());
        return new Span(low, Math.min(high, Math.max(low, Math.sqrt(low * high))), high);
    }

    private static double worn(Pack pack, PackRules rules, double cyclesToEnd) {
        return Math.max(0, 1 - (1 - rules.endOfLife()) * pack.fullCycles() / cyclesToEnd);
    }
}
