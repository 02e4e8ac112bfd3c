package org.fumewarden.assessment;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.fumewarden.model.Member;
import org.fumewarden.model.QuantityRange;

/** The wires and electrodes whose fume laboratories have analysed. */
final class Consumables {
    static final String SOLID_WIRE = "solid-wire-processes";

    private final ExposureTables figures;
    private final List<String> solidWire;

    Consumables(ExposureTables figures) {
        this.figures = figures;
        solidWire = figures.all(Member.class)
                .filter(m -> m.set().equals(SOLID_WIRE))
                .map(Member::item)
                .sorted()
                .toList();
    }

    /** The one that is usual for a process on a base metal. */
    Optional<String> usual(String process, String base) {
        return figures.all(QuantityRange.class)
                .filter(r -> r.quantity().equals("usual-on-" + base) && r.of().equals(process))
                .map(QuantityRange::with)
                .findFirst();
    }

    Stream<String> all() {
        return figures.all(QuantityRange.class)
                .filter(r -> r.quantity().equals("fume-per-consumable"))
                .map(QuantityRange::of)
                .distinct();
    }

    /** The share of an agent in the fume by laboratory figures of its consumable; solid wires stand for each other. */
    OptionalDouble share(String agent, String consumable, String process) {
        List<String> with = new ArrayList<>(List.of(process));
        if (solidWire.contains(process)) {
            with.addAll(solidWire);
        }
        String metal = PublishedLevels.metal(agent);
        String analysed = metal.equals("chromium-iii") ? "chromium" : metal;
        for (String each : with) {
            Optional<Double> whole = value("fume-per-consumable", consumable, each);
            Optional<Double> part = value(analysed + "-per-consumable", consumable, each)
                    .or(() -> analysed.equals("chromium-vi") ? hexavalent(consumable, each) : Optional.empty());
            if (whole.isPresent() && part.isPresent()) {
                return OptionalDouble.of(part.get() / whole.get());
            }
        }
        return OptionalDouble.empty();
    }

    private Optional<Double> hexavalent(String consumable, String process) {
        return value("chromium-per-consumable", consumable, process)
                .flatMap(c ->
                        value("chromium-vi-share-of-chromium", process, "any").map(s -> s * c));
    }

    private Optional<Double> value(String quantity, String of, String with) {
        return figures.range(quantity, of, with).map(r -> r.high().doubleValue());
    }
}
