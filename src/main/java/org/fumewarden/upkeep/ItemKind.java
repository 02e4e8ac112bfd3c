package org.fumewarden.upkeep;

import com.fasterxml.jackson.annotation.JsonValue;
import java.util.Set;
import org.fumewarden.model.Keyed;

/** What the register holds, and which circumstances it is expected to record for each kind. */
public enum ItemKind implements Keyed {
    WEARER(Set.of()),
    UNIT(Set.of("air-delivery", "use-mode", "disposable", "shared", "filter-kind")),
    MASK(Set.of("air-delivery", "use-mode", "disposable", "shared")),
    FILTER(Set.of("filter-kind")),
    BATTERY(Set.of()),
    PLANT(Set.of("lev-process")),
    AIR_SUPPLY(Set.of("air-delivery", "compressor-oil-lubricated")),
    SITE(Set.of());

    private final Set<String> ownFacts;

    ItemKind(Set<String> ownFacts) {
        this.ownFacts = ownFacts;
    }

    @Override
    @JsonValue
    public String key() {
        return Keyed.super.key();
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
