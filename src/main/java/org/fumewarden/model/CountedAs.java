package org.fumewarden.model;

import org.apache.commons.lang3.StringUtils;

/**
 * What a figure of a list is counted as, such as {@code as V} or {@code respirable}.
 *
 * @param words as the table has it; {@link #LISTED} where the list says nothing
 */
public record CountedAs(String words) {
    /** The substance as the list names it. */
    public static final String LISTED = "as listed";

    public CountedAs {
        Checks.text("words", words);
    }

    /** The words after a figure and its unit; nothing where the list says nothing. */
    public String after() {
        return words.equals(LISTED) ? "" : " " + words;
    }

    /** The words beside an agent, whose id may say the fraction already; empty where nothing is left to say. */
    public String beside(String agent) {
        String fraction = StringUtils.substringAfterLast(agent, "-");
        String left = !fraction.isEmpty() && words.startsWith(fraction) ? words.substring(fraction.length()) : words;
        return words.equals(LISTED) ? "" : StringUtils.stripStart(left, ", ");
    }
}
