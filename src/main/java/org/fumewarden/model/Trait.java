package org.fumewarden.model;

/** A circumstance that decides which duties apply. */
public record Trait(String circumstance, String value) implements Conclusion {
    @Override
    public String subject() {
        return circumstance;
    }
}
