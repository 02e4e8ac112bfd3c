package org.fumewarden.model;

/** A condition under which a class of respirator may be used. */
public record Condition(String deviceClass, String topic) implements Conclusion, OfClass {
    @Override
    public String subject() {
        return deviceClass;
    }
}
