package org.fumewarden.model;

import java.math.BigDecimal;

/** The assigned factor that a class of respirator has for this task, against what it must hold here. */
public record FactorInForce(String deviceClass, BigDecimal factor) implements Conclusion {
    /** True when so many times the level is above the limit, times the multiple for short levels and this factor. */
    public boolean tooLowForPeak(Ratio average, Threshold times, Threshold multiple) {
        return average.level()
                        .multiply(times.value())
                        .compareTo(average.limit().multiply(multiple.value()).multiply(factor))
                > 0;
    }

    @Override
    public String subject() {
        return deviceClass;
    }
}
