package org.fumewarden.endurance;

/** Letters of EN 14387 in the order in which a mark lists them. */
public enum GasType {
    /** Organic vapours that boil above 65 C. */
    A("A", Grade.CLASS),
    /** Inorganic gases, not carbon monoxide. */
    B("B", Grade.CLASS),
    /** Sulfur dioxide and other acid gases. */
    E("E", Grade.CLASS),
    /** Ammonia and its organic derivatives. */
    K("K", Grade.CLASS),
    /** Low boilers of groups 1 and 2. */
    AX("AX", Grade.NONE),
    /** Named substances. */
    SX("SX", Grade.NONE),
    /** Nitrous gases, only with P3. */
    NO("NO", Grade.NONE),
    /** Mercury, only with P3. */
    HG("Hg", Grade.NONE),
    /** Carbon monoxide, by nominal holding time in minutes; outside EN 14387. */
    CO("CO", Grade.MINUTES);

    /** What the figure behind the letters means. */
    enum Grade {
        NONE,
        CLASS,
        MINUTES
    }

    private final String letters;
    private final Grade grade;

    GasType(String letters, Grade grade) {
        this.letters = letters;
        this.grade = grade;
    }

    /** The letters as written on the filter. */
    public String letters() {
        return letters;
    }

    Grade gradeKind() {
        return grade;
    }

    /** True for types that exist only together with a P3 filter. */
    public boolean onlyWithP3() {
        return this == NO || this == HG;
    }
}
