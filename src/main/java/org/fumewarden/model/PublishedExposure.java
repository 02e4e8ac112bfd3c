package org.fumewarden.model;

import java.math.BigDecimal;

/**
 * What a published study measured in the air of workers who did one kind of work.
 *
 * @param id of the row
 * @param study the source; rows of one study stand together when one is left out
 * @param metal base metal, {@code any} when the study does not part them
 * @param extraction none, local, or mixed when the study does not part them
 * @param consumable wire or electrode that was used or is taken for it, {@code none} when not said
 * @param centre geometric mean or what the note says was taken for it
 * @param deviation geometric standard deviation, 1 or more
 * @param unit mg/m3 or ppm
 * @param sampler where the sampler sat
 */
public record PublishedExposure(
        RowRef ref,
        String id,
        String study,
        String process,
        String metal,
        String place,
        String extraction,
        String agent,
        String consumable,
        BigDecimal centre,
        BigDecimal deviation,
        Unit unit,
        String sampler)
        implements Row {
    public PublishedExposure {
        Checks.text("study", study);
        Checks.positive("centre", centre);
        Checks.positive("deviation", deviation);
    }
}
