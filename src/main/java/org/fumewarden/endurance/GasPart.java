package org.fumewarden.endurance;

/**
 * One gas type of a filter mark.
 *
 * @param type letters
 * @param grade class 1 to 3, minutes for carbon monoxide, 0 for types without either
 */
public record GasPart(GasType type, int grade) {
    public GasPart {
        boolean sound =
                switch (type.gradeKind()) {
                    case NONE -> grade == 0;
                    case CLASS -> grade >= 1 && grade <= 3;
                    case MINUTES -> grade > 0;
                };
        if (!sound) {
            throw new BadFigure(
                    type.letters() + " cannot have the figure " + grade + ".", "Write a class from 1 to 3, or none.");
        }
    }

    /** As on the filter, such as A2 or Hg. */
    public String written() {
        return grade == 0 ? type.letters() : type.letters() + grade;
    }
}
