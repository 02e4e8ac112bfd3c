package org.fumewarden.web;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import org.fumewarden.upkeep.Draft;
import org.fumewarden.upkeep.Forms;
import org.fumewarden.upkeep.Item;
import org.fumewarden.upkeep.Store;

/** A small register of the yard of Tarn Haven: one unit overdue for its examination, one withdrawn. */
final class Yard {
    static final LocalDate TODAY = LocalDate.of(2026, 3, 2);
    static final Clock CLOCK = Clock.fixed(Instant.parse("2026-03-02T08:00:00Z"), ZoneOffset.UTC);
    private static final LocalDate START = LocalDate.of(2026, 1, 5);

    private Yard() {}

    static Workshop in(Path folder) {
        Path file = folder.resolve("yard.db");
        try (Store store = Store.open(file)) {
            register(
                    store,
                    Forms.item(
                            "site",
                            Map.of(
                                    "id",
                                    "site",
                                    "employer",
                                    "Tarn Haven Fabrication",
                                    "address",
                                    "Quay Road 1",
                                    "code",
                                    "gb"),
                            Map.of()));
            register(store, unit("U-014", "blower unit"));
            register(store, unit("U-015", "blower unit <img src=x onerror=alert(1)>"));
            log(store, "U-014", "passed", "190", "2026-01-12");
            log(store, "U-015", "failed", "120", "2026-02-20");
        }
        return Workshop.at(file, CLOCK);
    }

    /** A wearer with her half mask, and an extraction arm, after what stands in the yard. */
    static void more(Workshop yard) {
        yard.write(store -> {
            Map<String, List<String>> tight = Map.of("face-seal", List.of("tight"));
            register(store, Forms.item("mask", Map.of("id", "M-1", "model", "half mask, size M"), tight));
            register(store, Forms.item("wearer", Map.of("id", "W-07", "name", "Odran Pell", "masks", "M-1"), Map.of()));
            register(
                    store,
                    Forms.item(
                            "plant",
                            Map.of("id", "X-01", "description", "extraction arm"),
                            Map.of("lev-process", List.of("general"))));
            return store.head();
        });
    }

    private static Item unit(String id, String description) {
        return Forms.item(
                "unit",
                Map.of("id", id, "description", description, "minimum-flow", "160"),
                Map.of(
                        "air-delivery", List.of("powered"),
                        "face-seal", List.of("loose"),
                        "use-mode", List.of("routine"),
                        "disposable", List.of("false")));
    }

    private static void register(Store store, Item item) {
        store.append(Draft.registering(item, START, "Sanna Teller"), CLOCK.instant());
    }

    private static void log(Store store, String item, String result, String flow, String on) {
        store.append(
                new Draft(
                        item,
                        LocalDate.parse(on),
                        "Sanna Teller",
                        Forms.details(
                                "examination",
                                Map.of(
                                        "result",
                                        result,
                                        "condition",
                                        "as found",
                                        "flow",
                                        flow,
                                        "minimum-flow",
                                        "160"))),
                CLOCK.instant());
    }
}
