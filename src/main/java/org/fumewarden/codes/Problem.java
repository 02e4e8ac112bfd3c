package org.fumewarden.codes;

import java.util.List;
import java.util.function.UnaryOperator;
import java.util.regex.Pattern;
import org.apache.commons.lang3.StringUtils;

/**
 * One thing wrong with a file, in words a person can act on.
 *
 * @param line 1 for the first line, 0 when the whole file is meant
 * @param field path of the entry, empty when the whole file is meant
 * @param remedy what would do
 * @param fault what kind of thing it is
 * @param given what stands there, where it is one word or number
 * @param ready words that would do as they are
 */
public record Problem(
        String file,
        int line,
        String field,
        String message,
        String remedy,
        Fault fault,
        String given,
        List<String> ready) {
    private static final int LONGEST_FIELD = 200;
    private static final Pattern WORD = Pattern.compile("\\p{L}+(?:[ ,:;]|[.]?$)");

    public Problem {
        file = printable(file);
        field = StringUtils.abbreviate(printable(field), LONGEST_FIELD);
        message = printable(message);
        remedy = begun(printable(remedy));
        ready = List.copyOf(ready);
    }

    /** One of a kind. */
    public Problem(String file, int line, String field, String message, String remedy, Fault fault) {
        this(file, line, field, message, remedy, fault, "", List.of());
    }

    /** One that only its message tells. */
    public Problem(String file, int line, String field, String message, String remedy) {
        this(file, line, field, message, remedy, Fault.OTHER);
    }

    /** Words begin with a capital; a key or an option stays as it has to be written. */
    private static String begun(String remedy) {
        return WORD.matcher(remedy).lookingAt() ? StringUtils.capitalize(remedy) : remedy;
    }

    /** What stands in a file may hold characters that move the cursor or hide text; they never reach a terminal. */
    private static String printable(String text) {
        return Hidden.shown(text);
    }

    /** The two lines that a reader sees. */
    public String text() {
        return text(UnaryOperator.identity());
    }

    /** The two lines as they are told in a language. */
    public String text(UnaryOperator<String> told) {
        String place = line > 0 ? file + ":" + line : file;
        String subject = field.isEmpty() ? "" : " " + field;
        return place + subject + " " + told.apply(message) + "\n" + told.apply(remedy);
    }
}
