package org.fumewarden.model;

/** Nothing requires a respirator: whoever wears one does so by choice. */
public record ByChoice(String because) implements Conclusion {
    @Override
    public String subject() {
        return because;
    }
}
