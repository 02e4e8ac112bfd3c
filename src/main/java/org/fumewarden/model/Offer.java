package org.fumewarden.model;

/** A class of respirator that nothing bars. */
public record Offer(String deviceClass, String verdict) implements Conclusion {
    @Override
    public String subject() {
        return deviceClass;
    }
}
