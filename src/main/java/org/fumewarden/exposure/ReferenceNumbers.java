package org.fumewarden.exposure;

/**
 * Reference values of the numerics that no library gives.
 *
 * <p>Tolerance factors, Land's factors and shares above a limit: mpmath 1.3.0 with 30 digits, by integration of the
 * defining formulas. Shapiro-Wilk: scipy 1.17.1. Rooms: scipy 1.17.1, DOP853 at relative tolerance 1e-13. Likelihood:
 * mpmath 1.3.0, root of the score equations.
 */
final class ReferenceNumbers {
    /** Sample sizes of the tolerance factors. */
    static final int[] SIZES = {2, 3, 4, 6, 9, 15, 30, 50, 100, 200, 500};

    /** Coverage 95 %, confidence 70 %. */
    static final double[] K_95_70 = {
        4.216693392092193,
        2.8091376128745145,
        2.4530776503973035,
        2.1867449612854886,
        2.0346940403809475,
        1.9165272950179306,
        1.8202779644464493,
        1.7748384128194712,
        1.7330059131318671,
        1.7054628552784477,
        1.6822778473000497
    };

    /** Coverage 95 %, confidence 95 %. */
    static final double[] K_95_95 = {
        26.2596739830345,
        7.6559001331533425,
        5.1438748609893015,
        3.7076836806886857,
        3.031237513471347,
        2.566000423490456,
        2.2198375320350565,
        2.064993417743976,
        1.9265388505123155,
        1.8372356441234243,
        1.7630459136366599
    };

    /** Coverage 90 %, confidence 99 %. */
    static final double[] K_90_99 = {
        103.02861300100214,
        13.995406554610167,
        7.3798905645735315,
        4.411080572397622,
        3.2404118623658826,
        2.521481168504625,
        2.029834190121624,
        1.8207995966423265,
        1.6389796119068565,
        1.5240081235574452,
        1.429727687378356
    };

    /** Coverage 95 %, lower limit with 95 %. */
    static final double[] K_95_05 = {
        0.4747909904257752,
        0.6391447454028346,
        0.7433042824797126,
        0.8747718734051007,
        0.9898747259139874,
        1.1139702100457138,
        1.2498068635890993,
        1.3293876239630953,
        1.4143319264980803,
        1.4777691174264145,
        1.5367132455235852
    };

    /** Land: samples, deviation of the logarithms, confidence, factor. */
    static final double[][] LAND = {
        {15, 1.25, 0.95, 3.162657727408747},
        {3, 0.1, 0.95, 2.7501651843291492},
        {31, 0.1, 0.95, 1.7008435158716755},
        {15, 1.25, 0.05, -1.7926777018928204},
        {47, 0.467953, 0.975, 2.2585508547620554},
        {7, 1.4, 0.95, 4.878461242025988},
        {3, 1, 0.95, 13.0542732072635151},
        {10, 3, 0.95, 7.86393552811241886},
        {500, 2, 0.95, 3.0298423815499538}
    };

    /** Fifteen air samples in mg/m3, AIHA strategy book, appendix data (open data set aihand, ORNL). */
    static final double[] AIR = {1.3, 1.8, 1.2, 4.5, 2.0, 2.1, 5.5, 2.2, 3.0, 2.4, 2.5, 2.5, 3.5, 2.8, 2.9};

    /** Share of the air samples above 5 mg/m3: one-sided 95 % limits. */
    static final double[] AIR_ABOVE_5 = {0.00857019566721877, 0.152826329620983};

    /** Chromium, US EPA publication 9285.7-081 (1992), in mg/kg. */
    static final double[] CHROMIUM = {10, 13, 20, 36, 41, 59, 67, 110, 110, 136, 140, 160, 200, 230, 1300};

    /** Shapiro-Wilk W of the logarithms: air samples, chromium. */
    static final double[] SHAPIRO = {0.9742959556409789, 0.9607179064057124};

    /** Manganese, US EPA Unified Guidance (2009) example 15-1; a negative value is a detection limit. */
    static final double[] MANGANESE = {
        -5, 12.1, 16.9, 21.6, -2, -5, 7.7, 53.6, 9.5, 45.9, -5, 5.3, 12.6, 106.3, 34.5, 6.3, 11.9, 10, -2, 77.2, 17.9,
        22.7, 3.3, 8.4, -2
    };

    /** Maximum likelihood of the manganese: mean and deviation of the logarithms. */
    static final double[] MANGANESE_FIT = {2.215904669355972, 1.3562911844245273};

    /** Two zones: generation, airflow, exchange, near volume, far volume, time; near and far after it, and averages. */
    static final double[][] TWO_ZONES = {
        {
            100,
            20,
            6.23291982472215,
            1.0723302924253162,
            98.92766970757468,
            15,
            20.776659043714393,
            4.742003961327901,
            19.16756366304259,
            3.3620171916459176
        },
        {
            5,
            2,
            5.654866776461628,
            0.05654866776461626,
            29.943451332235384,
            240,
            3.384193846569587,
            2.4999997184690685,
            3.2276989711404025,
            2.3436458509290374
        }
    };

    /** Mixed room: generation, airflow, volume, incoming, deposition, start, time; concentration after it, and average. */
    static final double[][] MIXED = {
        {20, 5, 60, 0, 0, 0, 30, 3.671660005504405, 2.531335997798238},
        {12, 1e-9, 8, 0, 0, 0, 60, 89.9999996625, 44.9999998875}
    };

    private ReferenceNumbers() {}
}
