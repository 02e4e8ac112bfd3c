package org.fumewarden.model;

import java.math.BigDecimal;

/** A measured answer, in the canonical unit of its question, such as minutes, percent, metres, degrees Celsius, litres a minute, grams or watt hours. */
public record Measure(String question, BigDecimal value, String unit, String path) implements Input {
    public Measure {
        Checks.text("question", question);
        Checks.present("value", value);
    }
}
