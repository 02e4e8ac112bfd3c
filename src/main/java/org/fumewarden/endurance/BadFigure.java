package org.fumewarden.endurance;

/** A figure that cannot be, in words a person can act on. */
public final class BadFigure extends IllegalArgumentException {
    private static final long serialVersionUID = 1L;

    private final String found;
    private final String remedy;

    /**
     * What is wrong.
     *
     * @param found the sentence that says what was found
     * @param remedy the sentence that says what to do
     */
    public BadFigure(String found, String remedy) {
        super(found + " " + remedy);
        this.found = found;
        this.remedy = remedy;
    }

    /** What was found. */
    public String found() {
        return found;
    }

    /** What to do. */
    public String remedy() {
        return remedy;
    }
}
