package org.fumewarden.upkeep;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.fumewarden.model.Duty;

/**
 * Whether the log proves a deed of a person on a day: a fit test, a clearance, training.
 *
 * @param stands true when it passed, nothing failed since, and no duty asks for it again by that day
 * @param entry the pass that counts, or the failure that took it away; empty when the log holds neither
 * @param because the same in words
 */
public record Proof(boolean stands, Optional<Long> entry, String because) {
    /** The reason of a failure in brackets; empty when the entry gives none. */
    static String why(Store store, Latest failed) {
        return store.entry(failed.sequence())
                .map(e -> e.details().whyFailed())
                .filter(r -> !r.isEmpty())
                .map(r -> " (" + r + ")")
                .orElse("");
    }

    /**
     * What the log proves.
     *
     * @param duties those that the deed discharges; those whose conditions are known to hold make it run out
     */
    public static Proof of(
            Store store,
            String item,
            String serves,
            List<Duty> duties,
            Map<String, List<String>> facts,
            LocalDate day) {
        String deed = serves.replaceFirst("^fit-test/", "fit test in ").replace("medical/", "medical ");
        Optional<Verification.Damage> changed = store.changed(item);
        if (changed.isPresent()) {
            return new Proof(
                    false,
                    Optional.of(changed.get().entry()),
                    deed + " is not shown: " + changed.get().text().replaceAll("\\.$", ""));
        }
        Optional<Latest> passed = store.latest(item, serves, day).or(() -> store.latest(item, serves));
        Optional<Latest> failed = store.failed(item, serves, LocalDate.MAX)
                .filter(f -> passed.map(f::after).orElse(true));
        if (failed.isPresent()) {
            return new Proof(
                    false,
                    failed.map(Latest::sequence),
                    deed + " failed on " + failed.get().on() + why(store, failed.get()));
        }
        if (passed.isEmpty()) {
            return new Proof(false, Optional.empty(), deed + " is not in the log");
        }
        Optional<Long> entry = passed.map(Latest::sequence);
        LocalDate on = passed.get().on();
        if (on.isAfter(day)) {
            return new Proof(false, entry, deed + " passed on " + on + " only, after " + day);
        }
        for (Duty duty : duties) {
            Optional<LocalDate> due = duty.period().map(p -> Days.due(on, p));
            if (due.filter(d -> d.isBefore(day)).isPresent() && duty.surelyUnder(facts)) {
                return new Proof(
                        false,
                        entry,
                        deed + " passed on " + on + ", was due again on " + due.get() + " ["
                                + duty.citation().source() + " "
                                + duty.citation().clause() + "]");
            }
        }
        return new Proof(true, entry, deed + " passed on " + on);
    }
}
