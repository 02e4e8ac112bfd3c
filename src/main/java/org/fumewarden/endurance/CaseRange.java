package org.fumewarden.endurance;

/**
 * A model figure for the short, the likely and the long run, in whichever order the numbers fall.
 *
 * @param shortRun figure that gives the shortest time
 * @param likely figure to expect
 * @param longRun figure that gives the longest time
 */
public record CaseRange(double shortRun, double likely, double longRun) {
    public CaseRange {
        new Inputs()
                .positive("short run", shortRun)
                .positive("likely", likely)
                .positive("long run", longRun)
                .orThrow("Model figure");
    }
}
