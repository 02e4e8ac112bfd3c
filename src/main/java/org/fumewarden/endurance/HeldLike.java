package org.fumewarden.endurance;

/**
 * How well a filter holds the agent, compared with its test gas.
 *
 * @param shown true when it holds at least the named share of it
 * @param share moles of the agent held at its concentration per mole of test gas held at the test, 0 to 1
 * @param warmAirCounted true when the share already allows for the temperature in use
 * @param floorPpm concentration below which the time at it is used, 0 without one
 * @param because why, one clause for the reader
 */
public record HeldLike(boolean shown, double share, boolean warmAirCounted, double floorPpm, String because) {
    public HeldLike {
        new Inputs().within("share", share, 0, 1).orThrow("Holding");
    }

    /** The agent is the test gas itself and is bound by reaction, so that little gas is held as firmly as much. */
    public static HeldLike testGasBoundByReaction() {
        return new HeldLike(true, 1, false, 0, "it is the test gas of this type and is bound by reaction");
    }

    /** Nobody has shown it. */
    public static HeldLike notShown() {
        return new HeldLike(false, 0, false, 0, "not shown");
    }
}
