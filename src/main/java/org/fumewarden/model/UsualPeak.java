package org.fumewarden.model;

/** The threshold that says how many times the average of this shift a peak is usually taken as at most. */
public record UsualPeak(String threshold) implements Conclusion {
    @Override
    public String subject() {
        return threshold;
    }
}
