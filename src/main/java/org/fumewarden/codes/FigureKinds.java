package org.fumewarden.codes;

import java.util.Set;

/** Kinds of table whose rows are read by arithmetic or by people and never become facts of a rule. */
final class FigureKinds {
    private static final Set<String> KINDS = Set.of(
            "adsorbed-vapours",
            "adsorption-model",
            "blower-model",
            "breathing-peaks",
            "cartridge-limits",
            "cartridge-tests",
            "duty-vocabulary",
            "filter-use-times",
            "gas-filter-classes",
            "gas-filter-tests",
            "low-boiler-times",
            "pack-behaviour",
            "pack-cold",
            "powered-unit-flows",
            "service-life-rules");

    private FigureKinds() {}

    static boolean contains(String kind) {
        return KINDS.contains(kind);
    }
}
