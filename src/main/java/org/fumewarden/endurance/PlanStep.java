package org.fumewarden.endurance;

/**
 * One thing to do in a shift.
 *
 * @param wornMinutes minutes of wear before it, breaks not counted
 * @param action what
 * @param inBreak true in a break, false when the wearer has to leave the hazardous area for it
 */
public record PlanStep(long wornMinutes, Action action, boolean inBreak) {

    /** What a step asks for. */
    public enum Action {
        /** Fit a full pack. */
        SWAP_PACK("fit a charged pack"),
        /** Quick charge, not above the share that does no harm. */
        QUICK_CHARGE("quick charge the pack"),
        /** Fit a new filter set. */
        CHANGE_FILTER("fit a new filter set"),
        /** Nothing is left to go on with. */
        STOP("stop work. No charged pack or filter is left");

        private final String words;

        Action(String words) {
            this.words = words;
        }
    }

    /** The step in words. */
    public String words() {
        return "After " + WrittenNumbers.clock(wornMinutes) + " of wear"
                + (inBreak ? ", in the break: " : ", leave the hazardous area and ") + action.words + ".";
    }
}
