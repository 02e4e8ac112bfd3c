package org.fumewarden.model;

/** Units of airborne concentration. */
public enum Unit {
    MG_M3("mg/m3"),
    PPM("ppm");

    private final String symbol;

    Unit(String symbol) {
        this.symbol = symbol;
    }

    public String symbol() {
        return symbol;
    }
}
