package org.fumewarden.model;

/** A class of respirator that cannot be called suitable until a question is answered. */
public record Doubt(String deviceClass, String question) implements Conclusion, OfClass {
    @Override
    public String subject() {
        return deviceClass;
    }
}
