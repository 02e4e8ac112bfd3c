package org.fumewarden.endurance;

import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;

/**
 * The mark of a gas, particle or combined filter.
 *
 * @param gases in the order of the standard, each type once
 * @param particleClass 1 to 3, 0 without particle filter
 * @param reuse what the mark says about more than one shift
 */
public record FilterMark(List<GasPart> gases, int particleClass, Reuse reuse) {

    /** Use of the particle filter over more than one shift. */
    public enum Reuse {
        /** Marked R: more than one shift. */
        REUSABLE(" R"),
        /** Marked NR: one shift only. */
        ONE_SHIFT(" NR"),
        /** Not marked. */
        NOT_STATED("");

        private final String written;

        Reuse(String written) {
            this.written = written;
        }
    }

    public FilterMark {
        gases = gases.stream().sorted(Comparator.comparing(GasPart::type)).toList();
        if (particleClass < 0 || particleClass > 3) {
            throw new BadFigure(
                    "A particle filter is P1, P2 or P3, not P" + particleClass + ".", "Write P1, P2 or P3.");
        }
        if (gases.isEmpty() && particleClass == 0) {
            throw new BadFigure("A mark needs a gas type or a particle class.", "Write the whole mark.");
        }
        if (gases.stream().map(GasPart::type).distinct().count() < gases.size()) {
            throw new BadFigure("A gas type stands twice.", "Write each gas type once.");
        }
        if (particleClass != 3 && gases.stream().anyMatch(part -> part.type().onlyWithP3())) {
            throw new BadFigure("NO and Hg filters exist only with P3.", "End the mark in P3.");
        }
        if (particleClass == 0 && reuse != Reuse.NOT_STATED) {
            throw new BadFigure("R and NR belong to a particle filter.", "Write the particle class too.");
        }
    }

    /** The mark the way the standard writes it, such as {@code A2B2-P3} or {@code A1B1E1K1Hg-P3 R}. */
    public String written() {
        String letters = gases.stream().map(GasPart::written).collect(Collectors.joining());
        String particle = particleClass == 0 ? "" : "P" + particleClass + reuse.written;
        return letters.isEmpty() || particle.isEmpty() ? letters + particle : letters + "-" + particle;
    }
}
