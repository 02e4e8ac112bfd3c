package org.fumewarden.model;

import java.math.BigDecimal;

/** The assigned factor that a class of respirator has for this task, against what it must hold here. */
public record FactorInForce(String deviceClass, BigDecimal factor) implements Conclusion {
    @Override
    public String subject() {
        return deviceClass;
    }
}
