package org.fumewarden.engine;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.apache.commons.lang3.StringUtils;
import org.fumewarden.codes.Problem;

/**
 * One rule as it is written.
 *
 * @param folder rule folder, {@code shared} or a code
 * @param phase name of the rule file without its ending
 * @param line of the word {@code rule}
 * @param lines how many lines it takes
 * @param notes its metadata, as they stand
 * @param patterns what it asks for, in order
 * @param bindings names bound to something that the match carries, without the dollar sign
 * @param made what it concludes, when it does nothing but conclude
 * @param text the rule itself
 * @param conditions where its conditions begin in the text, and where they end
 */
public record WrittenRule(
        String file,
        String folder,
        String phase,
        String name,
        int line,
        int lines,
        List<Note> notes,
        List<Asked> patterns,
        Set<String> bindings,
        Optional<Made> made,
        String text,
        Span conditions) {

    /**
     * A piece of metadata.
     *
     * @param value without its quotes
     */
    public record Note(String name, String value, boolean quoted, boolean repeated) {}

    /**
     * A pattern of the conditions.
     *
     * @param binding name it is bound to, without the dollar sign; empty when it is not
     * @param words the words that each part is compared with
     * @param literals numbers and words in quotes, as written
     * @param hidden true inside not, exists or accumulate: the match does not carry its facts
     */
    public record Asked(
            String binding,
            String type,
            Map<String, List<String>> words,
            List<String> literals,
            int line,
            boolean hidden) {}

    /**
     * A conclusion.
     *
     * @param words for each argument of its constructor the word in quotes that stands there; empty for a factory and for what
     *     is worked out
     * @param literals numbers and words in quotes, as written
     */
    public record Made(String type, List<Optional<String>> words, List<String> literals) {}

    /** From the first sign to the sign after the last. */
    public record Span(int from, int to) {}

    /** The same rule of a file that lies elsewhere. */
    WrittenRule at(String place) {
        return new WrittenRule(
                place, folder, phase, name, line, lines, notes, patterns, bindings, made, text, conditions);
    }

    public String id() {
        return StringUtils.substringBefore(name, " ");
    }

    /** The value of a piece of metadata; empty without it. */
    public Optional<String> note(String wanted) {
        return notes.stream()
                .filter(n -> n.name().equals(wanted) && n.quoted())
                .map(Note::value)
                .findFirst();
    }

    /** The type of the conclusion. */
    public Optional<String> concludes() {
        return made.map(Made::type);
    }

    public Problem problem(String message, String maybe) {
        return problem(line, message, maybe);
    }

    public Problem problem(int where, String message, String maybe) {
        return new Problem(file, where, id(), message, maybe);
    }
}
