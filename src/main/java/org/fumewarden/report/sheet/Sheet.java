package org.fumewarden.report.sheet;

import java.util.List;

/**
 * A sheet of advice before it has a form.
 *
 * @param kind what sort of sheet it is
 * @param title of the task
 * @param under one line below the title
 * @param state key of the state of the advice
 * @param page parts of the page that is read
 * @param annex parts behind it; empty when they were not asked for
 * @param closing the line that ends every sheet
 * @param language tag of its language
 */
public record Sheet(
        String kind,
        String title,
        String under,
        String state,
        List<Part> page,
        List<Part> annex,
        String closing,
        String language) {
    /** The state of a paper of the register, which has heads above its parts instead of a margin. */
    public static final String PAPER = "paper";

    public Sheet {
        page = List.copyOf(page);
        annex = List.copyOf(annex);
    }

    /** The sheet with one more sentence below its title, before all others. */
    public Sheet under(String first) {
        return new Sheet(kind, title, first + " " + under, state, page, annex, closing, language);
    }
}
