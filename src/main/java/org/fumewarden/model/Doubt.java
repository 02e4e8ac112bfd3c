package org.fumewarden.model;

/** A class of respirator that cannot be called suitable until a question is answered. */
public record Doubt(String deviceClass, String question) implements Conclusion, OfClass {
    /** True when it is open which filter holds an agent. */
    public boolean ofFilter() {
        return question.startsWith("filter-for-");
    }

    @Override
    public String subject() {
        return deviceClass;
    }
}
