package org.fumewarden.codes;

import java.time.DateTimeException;
import java.time.Period;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fumewarden.model.Anchor;
import org.fumewarden.model.Duty;
import org.fumewarden.model.DutyCondition;
import org.fumewarden.model.Force;
import org.fumewarden.model.Frequency;
import org.fumewarden.model.Keep;
import org.fumewarden.model.Row;
import org.fumewarden.model.RowRef;
import org.fumewarden.model.Subject;

/** Reads a duty with its conditions. */
final class DutyReader {
    private DutyReader() {}

    /** The duty, and each of its conditions as a row of its own for the rules. */
    static List<Row> read(RowReader row) {
        String id = row.text("id");
        List<DutyCondition> conditions = new ArrayList<>();
        for (Located when : row.items("when")) {
            RowReader condition = new RowReader(when, "duty", row.ref(id).citation(), Document::none);
            String circumstance = condition.text("fact");
            RowRef place = row.ref(id + "/" + conditions.size());
            conditions.add(new DutyCondition(place, id, circumstance, condition.words("is")));
            condition.finish();
        }
        List<Row> rows = new ArrayList<>();
        rows.add(new Duty(
                row.ref(id),
                id,
                row.text("do"),
                row.one("freq", Frequency.class),
                period(row),
                row.one("anchor", Anchor.class),
                row.text("who"),
                row.some("applies-to", Subject.class),
                row.text("done-by"),
                row.text("record", "false").startsWith("true"),
                row.words("fields"),
                keep(row),
                row.one("force", Force.class),
                conditions));
        rows.addAll(conditions);
        return rows;
    }

    /** A longest interval above zero; nothing when the cell is left out or says none. */
    private static Optional<Period> period(RowReader row) {
        String text = row.text("period", "none");
        try {
            Optional<Period> period = text.equals("none") ? Optional.empty() : Optional.of(Period.parse(text));
            if (period.filter(p -> p.isNegative() || p.isZero()).isEmpty()) {
                return period;
            }
        } catch (DateTimeException e) {
            // Said below, as for a period that is not above zero.
        }
        row.refuse("period", text, "write P1M, P3M, P1Y, ... or none.");
        return Optional.empty();
    }

    /** How long a record is kept; not stated when the cell is left out. */
    private static Keep keep(RowReader row) {
        String text = row.text("keep", "not stated");
        return Keep.parse(text).orElseGet(() -> {
            row.refuse(
                    "keep",
                    text,
                    "write \"record made + P5Y\", \"later of ... and ...\", \"until next record\","
                            + " \"while current\" or \"not stated\".");
            return Keep.parse("not stated").orElseThrow();
        });
    }
}
