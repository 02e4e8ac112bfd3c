package org.fumewarden.model;

/** A required factor that cannot be worked out until a question is answered. */
public record OpenNeed(String agent, String question) implements Conclusion {
    /** The shift average of an agent is not known. */
    public static OpenNeed shift(String agent) {
        return new OpenNeed(agent, "exposures." + agent + "." + Averaging.TWA.key());
    }

    /** The highest quarter of an hour of an agent is not known. */
    public static OpenNeed peak(String agent) {
        return new OpenNeed(agent, "exposures." + agent + "." + Averaging.STEL.key());
    }

    /** True when it is the shift average that is asked for. */
    public boolean ofShift() {
        return equals(shift(agent));
    }

    /** True when it is the limit that is asked for. */
    public boolean ofLimit() {
        return question.endsWith(".limit");
    }

    @Override
    public String subject() {
        return agent;
    }
}
