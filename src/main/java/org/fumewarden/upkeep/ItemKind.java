package org.fumewarden.upkeep;

import com.fasterxml.jackson.annotation.JsonValue;
import java.util.Set;

/** What the register holds, and which circumstances it is expected to record for each kind. */
public enum ItemKind implements Keyed {
    WEARER("wearer", Set.of()),
    UNIT("unit", Set.of("face-seal", "air-delivery", "use-mode", "disposable", "shared", "filter-kind")),
    MASK("mask", Set.of("face-seal", "air-delivery", "use-mode", "disposable", "shared")),
    FILTER("filter", Set.of("filter-kind")),
    BATTERY("battery", Set.of()),
    PLANT("plant", Set.of("lev-process")),
    AIR_SUPPLY("air-supply", Set.of("air-source", "air-delivery", "compressor-oil-lubricated")),
    SITE("site", Set.of());

    private final String key;
    private final Set<String> ownFacts;

    ItemKind(String key, Set<String> ownFacts) {
        this.key = key;
        this.ownFacts = ownFacts;
    }

    @Override
    @JsonValue
    public String key() {
        return key;
    }

    /**
     * Circumstances that belong to the thing itself.
     *
     * <p>A duty that hangs on one of these is owed when the register does not say, since the thing is there and nobody has
     * shown that the duty does not apply.
     */
    public Set<String> ownFacts() {
        return ownFacts;
    }
}
