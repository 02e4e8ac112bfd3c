package org.fumewarden.model;

import java.math.BigDecimal;

/** A measured answer, in the canonical unit of its question: minutes, percent, metres, degrees Celsius, cubic metres, litres a minute. */
public record Measure(String question, BigDecimal value, String unit, String path) implements Input {
    public Measure {
        Checks.text("question", question);
        Checks.present("value", value);
    }
}
