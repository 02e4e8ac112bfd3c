package org.fumewarden.endurance;

/** The methods that bound the use time of a gas filter. */
public enum BoundKind {
    /** What the filter had to hold at its approval test, spread over this flow and concentration. */
    TEST_CAPACITY("test capacity", true),
    /** Adsorption-bed equation with published coefficients. */
    ADSORPTION_MODEL("adsorption model", true),
    /** Published rule of thumb. */
    RULE_OF_THUMB("rule of thumb", true),
    /** Breakthrough measured or stated by the maker for conditions at least as hard. */
    MEASURED("measured breakthrough", true),
    /** A use time fixed for the filter type, such as the group times of low boilers. */
    FIXED_USE_TIME("fixed use time", true),
    /** A cap that a code sets on top of any method. */
    CODE_CAP("longest use that the code allows", false),
    /** The date on the filter, or the time since it was opened. */
    SHELF_LIFE("shelf life", false);

    private final String words;
    private final boolean estimates;

    BoundKind(String words, boolean estimates) {
        this.words = words;
        this.estimates = estimates;
    }

    /** The method in words. */
    public String words() {
        return words;
    }

    /** True when the method says something about the gas, and not only about the calendar or the law. */
    public boolean estimates() {
        return estimates;
    }
}
