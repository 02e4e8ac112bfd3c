package org.fumewarden.upkeep;

import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.time.Period;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.fumewarden.model.Anchor;
import org.fumewarden.model.Citation;
import org.fumewarden.model.Confidence;
import org.fumewarden.model.Duty;
import org.fumewarden.model.DutyCondition;
import org.fumewarden.model.Force;
import org.fumewarden.model.Frequency;
import org.fumewarden.model.Keep;
import org.fumewarden.model.RowRef;
import org.fumewarden.model.Subject;

/** A small yard in Tarn Haven. */
final class Samples {
    static final Instant NOW = Instant.parse("2029-01-02T09:00:00Z");

    private Samples() {}

    static LocalDate day(String text) {
        return LocalDate.parse(text);
    }

    static Item.Unit unit(String id, Map<String, List<String>> facts) {
        return new Item.Unit(
                id,
                "blower unit on the belt",
                "as on the plate",
                Optional.of(new BigDecimal("160")),
                Optional.empty(),
                Optional.of("W-01"),
                Optional.empty(),
                Optional.empty(),
                facts);
    }

    static Item.Unit powered(String id) {
        return unit(
                id,
                Map.of(
                        "face-seal", List.of("loose"),
                        "air-delivery", List.of("powered"),
                        "use-mode", List.of("routine"),
                        "disposable", List.of("false"),
                        "shared", List.of("false"),
                        "filter-kind", List.of("particle")));
    }

    static Item.Wearer wearer(String id, String name, List<String> masks) {
        return new Item.Wearer(id, name, "slipway", Optional.empty(), Optional.empty(), masks, Map.of());
    }

    static Item.Mask mask(String id, String model) {
        return new Item.Mask(
                id,
                "half mask",
                model,
                "half",
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Map.of("face-seal", List.of("tight"), "disposable", List.of("false")));
    }

    static Draft registering(Item item) {
        return Draft.registering(item, day("2026-01-05"), "stores");
    }

    static Draft examined(String item, String on, Result result) {
        return new Draft(item, day(on), "Sanna Teller", examination(result));
    }

    /** A thorough examination of a powered unit with nothing to remark. */
    static Details examination(Result result) {
        return Forms.details(
                "examination",
                Map.of(
                        "result",
                        result.key(),
                        "condition",
                        "sound",
                        "filter-condition",
                        "clean",
                        "battery-condition",
                        "holds charge",
                        "flow",
                        "171",
                        "minimum-flow",
                        "160",
                        "signature",
                        "S. T."));
    }

    static Draft checked(String item, String on, Result result) {
        return new Draft(
                item,
                day(on),
                "Odran Pell",
                new Details.BeforeUseCheck(
                        result,
                        List.of(new Details.Point("pu-hose", result, "")),
                        Optional.empty(),
                        Optional.empty(),
                        ""));
    }

    static Draft repaired(String item, String on) {
        return new Draft(item, day(on), "workshop", new Details.Repair("hose changed", "breathing hose"));
    }

    static Duty duty(String id, String period, Subject subject, String doneBy, Force force, DutyCondition... when) {
        return new Duty(
                new RowRef("duties", id, new Citation("source", "clause of " + id, "-", Confidence.READ)),
                id,
                "do " + id,
                Frequency.MAX_INTERVAL,
                Optional.of(Period.parse(period)),
                Anchor.LAST_DONE,
                "competent person",
                List.of(subject),
                doneBy,
                true,
                List.of(),
                Keep.parse("record made + P5Y").orElseThrow(),
                force,
                List.of(when));
    }

    static DutyCondition when(String fact, String... values) {
        RowRef ref = new RowRef("duties", fact, new Citation("source", "clause", "-", Confidence.READ));
        return new DutyCondition(ref, "duty", fact, List.of(values));
    }

    /** A duty of a physician, for which a record is kept. */
    static Duty exam(
            String id, Frequency frequency, String period, Anchor anchor, Subject subject, String doneBy, String keep) {
        return new Duty(
                new RowRef("duties", id, new Citation("source", "clause of " + id, "-", Confidence.READ)),
                id,
                "do",
                frequency,
                Optional.of(Period.parse(period)),
                anchor,
                "physician",
                List.of(subject),
                doneBy,
                true,
                List.of(),
                Keep.parse(keep).orElseThrow(),
                Force.LAW,
                List.of());
    }
}
