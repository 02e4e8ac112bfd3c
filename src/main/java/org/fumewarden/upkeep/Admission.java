package org.fumewarden.upkeep;

import java.sql.SQLException;
import java.time.Instant;
import java.util.Optional;
import org.fumewarden.codes.Fault;

/** Refuses entries that do not fit what the store holds already. */
final class Admission {
    private final StoreQueries queries;

    Admission(StoreQueries queries) {
        this.queries = queries;
    }

    void check(Draft draft, Instant recorded) throws SQLException {
        Optional<Item> known = queries.item(draft.item());
        Plausible.day(draft, recorded, known);
        if (draft.details() instanceof Details.Registration registration) {
            if (known.isPresent() && known.get().kind() != registration.item().kind()) {
                throw StoreException.refused(
                        "\"" + draft.item() + "\" is already the id of a "
                                + known.get().kind().key() + ".",
                        "give this " + registration.item().kind().key() + " another id.");
            }
            return;
        }
        if (known.isEmpty()) {
            throw StoreException.refused(
                            "\"" + draft.item() + "\" is not in the register.", "register it first, or check the id.")
                    .as(Fault.UNKNOWN);
        }
        if (draft.details() instanceof Details.Correction correction) {
            correctable(draft, correction);
        } else if (queries.state(draft.item()).standing() == UnitState.Standing.SCRAPPED) {
            throw StoreException.refused(
                            "\"" + draft.item() + "\" was withdrawn for good.",
                            "check the id, or correct the withdrawal if it was entered by mistake.")
                    .as(Fault.SCRAPPED);
        }
    }

    private void correctable(Draft draft, Details.Correction correction) throws SQLException {
        long number = correction.entry();
        LogEntry earlier = queries.entry(number)
                .orElseThrow(() -> StoreException.refused(
                        "there is no entry " + number + " to correct.", "list the entries of the item."));
        if (!earlier.item().equals(draft.item())) {
            throw StoreException.refused(
                    "entry " + number + " is about \"" + earlier.item() + "\", not \"" + draft.item() + "\".",
                    "void entry " + number + " and enter it anew under the right item.");
        }
        if (earlier.details() instanceof Details.Registration) {
            throw StoreException.refused(
                    "entry " + number + " is a registration.", "register the item again with the right values.");
        }
        if (earlier.details().result() == Result.VOID) {
            throw StoreException.refused("entry " + number + " only voids another.", "enter the deed anew.");
        }
        if (queries.corrected(number)) {
            throw StoreException.refused(
                    "entry " + number + " was corrected before.", "correct the later entry that took its place.");
        }
    }
}
