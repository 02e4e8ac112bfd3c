package org.fumewarden.assessment;

/** Numbers in sentences, for reading only. */
final class Words {
    private Words() {}

    static String number(double value) {
        return org.fumewarden.model.Figures.shown(value);
    }

    static String minutes(double minutes) {
        return number(minutes) + " min";
    }
}
