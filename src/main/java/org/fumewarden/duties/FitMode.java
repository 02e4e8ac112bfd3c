package org.fumewarden.duties;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.fumewarden.model.Duty;
import org.fumewarden.model.Frequency;
import org.fumewarden.upkeep.MaskFace;
import org.fumewarden.upkeep.Store;

/** In which mode a mask with a blower or supplied air is fit-tested, where the tables of a code say so. */
public final class FitMode {
    private static final String SUPPLY = "air-delivery";

    private FitMode() {}

    /** The duty in its own words with its clause; nothing where no mask of this model is known to have such a supply. */
    public static Optional<String> of(Store store, List<Duty> duties, String model) {
        return MaskFace.masks(store, model).stream()
                .flatMap(m -> duties.stream().filter(d -> mode(d, m.facts())))
                .findFirst()
                .map(d -> d.what() + " [" + d.citation().source() + " "
                        + d.citation().clause() + "].");
    }

    private static boolean mode(Duty duty, Map<String, List<String>> facts) {
        return duty.doneBy().equals("fit-test")
                && duty.frequency() == Frequency.EVENT
                && duty.when().stream().anyMatch(c -> c.circumstance().equals(SUPPLY))
                && duty.surelyUnder(facts);
    }
}
