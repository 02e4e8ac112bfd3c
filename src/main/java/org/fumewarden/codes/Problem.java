package org.fumewarden.codes;

/**
 * One thing wrong with a file, in words a person can act on.
 *
 * @param line 1 for the first line, 0 when the whole file is meant
 * @param field path of the entry, empty when the whole file is meant
 * @param maybe what would do, without the word "Maybe"
 */
public record Problem(String file, int line, String field, String message, String maybe) {

    /** The two lines that a reader sees. */
    public String text() {
        String place = line > 0 ? file + ":" + line : file;
        String subject = field.isEmpty() ? "" : " " + field;
        return place + subject + " " + message + "\nMaybe " + maybe;
    }
}
