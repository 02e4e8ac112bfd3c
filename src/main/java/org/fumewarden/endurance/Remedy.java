package org.fumewarden.endurance;

import java.util.ArrayList;
import java.util.List;

/**
 * The smallest change that makes a shift last.
 *
 * @param morePacks charged packs to carry besides
 * @param moreFilters filter sets to carry besides
 * @param startFull true when the fitted pack must be charged before the shift
 * @param chargeInBreaks true when the pack must be charged in the breaks
 */
public record Remedy(int morePacks, int moreFilters, boolean startFull, boolean chargeInBreaks) {

    /** The change in words. */
    public String words() {
        List<String> parts = new ArrayList<>();
        if (startFull) {
            parts.add("charge the fitted pack fully before the shift");
        }
        if (chargeInBreaks) {
            parts.add("quick charge the pack in the breaks");
        }
        if (morePacks > 0) {
            parts.add("carry " + morePacks + " more charged " + (morePacks == 1 ? "pack" : "packs"));
        }
        if (moreFilters > 0) {
            parts.add("carry " + moreFilters + " more filter " + (moreFilters == 1 ? "set" : "sets"));
        }
        return String.join(", ", parts);
    }
}
