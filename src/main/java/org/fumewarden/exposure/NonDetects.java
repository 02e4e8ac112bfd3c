package org.fumewarden.exposure;

/** What is done with samples below their detection limit. */
public enum NonDetects {
    /** Maximum likelihood of the left-censored lognormal distribution: the usual choice. */
    MAXIMUM_LIKELIHOOD("maximum likelihood"),
    /** Straight line through the detected results against normal quantiles. */
    REGRESSION_ON_ORDER("regression on order statistics"),
    /** The same line, used only to fill in the non-detects; mean and deviation come from the filled set. */
    ROBUST_REGRESSION("regression on order statistics, non-detects filled in"),
    /** Half the detection limit in place of the non-detect; biased, only when somebody asks for it. */
    HALF_LIMIT("substitution by half the detection limit"),
    /** Detection limit over the root of two; biased, only when somebody asks for it. */
    LIMIT_OVER_ROOT_TWO("substitution by the detection limit over root two"),
    /** The detection limit itself; lifts the mean and hides the spread, only when somebody asks for it. */
    AT_LIMIT("substitution by the detection limit");

    private final String words;

    NonDetects(String words) {
        this.words = words;
    }

    /** The method in words. */
    public String words() {
        return words;
    }

    boolean substitutes() {
        return this == HALF_LIMIT || this == LIMIT_OVER_ROOT_TWO || this == AT_LIMIT;
    }

    /** What stands in for a non-detect with this detection limit. */
    double standIn(double detectionLimit) {
        return switch (this) {
            case HALF_LIMIT -> detectionLimit / 2;
            case LIMIT_OVER_ROOT_TWO -> detectionLimit / Math.sqrt(2);
            default -> detectionLimit;
        };
    }
}
