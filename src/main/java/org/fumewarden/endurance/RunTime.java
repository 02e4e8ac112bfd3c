package org.fumewarden.endurance;

/**
 * How long a powered unit runs before its wearer must be out of the hazard.
 *
 * @param minutes low, likely and high
 * @param end what ends the low case, on which plans rest
 * @param basis where the figures come from
 */
public record RunTime(Span minutes, End end, Basis basis) {

    /** What comes first. */
    public enum End {
        /** The pack is down to its reserve. */
        RESERVE,
        /** The flow falls to the minimum design flow. */
        MINIMUM_FLOW
    }

    /** Where the figures come from. */
    public enum Basis {
        /** The user's own curve. */
        OWN_CURVE,
        /** Modelled from power and energy. */
        MODELLED
    }

    /** The earlier of the pack's and the flow's end at each place. */
    public static RunTime earlier(Span toReserve, Span toMinimumFlow, Basis basis) {
        Span first = new Span(
                Math.min(toReserve.low(), toMinimumFlow.low()),
                Math.min(toReserve.likely(), toMinimumFlow.likely()),
                Math.min(toReserve.high(), toMinimumFlow.high()));
        return new RunTime(first, toMinimumFlow.low() < toReserve.low() ? End.MINIMUM_FLOW : End.RESERVE, basis);
    }

    /** The range in words, rounded down. */
    public String words() {
        String low = WrittenNumbers.clock(WrittenNumbers.minutesDown(minutes.low()));
        String high = WrittenNumbers.clock(WrittenNumbers.minutesDown(minutes.high()));
        String likely = WrittenNumbers.clock(WrittenNumbers.minutesDown(minutes.likely()));
        return (end == End.RESERVE ? "Until the pack is down to its reserve" : "Until the flow falls to its minimum")
                + (low.equals(high) ? ": " + low : ": " + low + " to " + high + ", likely " + likely)
                + (basis == Basis.MODELLED ? " (modelled)." : " (by your own curve).");
    }
}
