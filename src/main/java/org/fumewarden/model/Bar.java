package org.fumewarden.model;

/** A class of respirator that must not be used for this task, and what bars it. */
public record Bar(String deviceClass, String because) implements Conclusion, OfClass {
    @Override
    public String subject() {
        return deviceClass;
    }
}
