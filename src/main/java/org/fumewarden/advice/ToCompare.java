package org.fumewarden.advice;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.commons.lang3.StringUtils;
import org.fumewarden.codes.EditedRows;

/**
 * A value behind an answer that nobody has compared with its text, or on which documents differ.
 *
 * @param row address of the table row
 * @param value what the row holds
 * @param document title of the document that should hold it
 * @param place where in the document, with the edition
 * @param matters what would change if the value were the next step up or down; empty when nothing would
 */
public record ToCompare(String row, String value, String document, String place, String matters) {
    /** What stands where a value matters, while nobody asked the engine. */
    public static final String UNTRIED = "Not tried with other values.";

    /** How the words of a value begin that is another than the one that was compared. */
    static final String CHANGED = "Changed and not compared: ";

    /** How the words of a value of the organisation begin where that of the program would change the answer. */
    static final String PROGRAM = "Changed, the program has ";

    /** What the program has of a row that somebody added. */
    static final String NONE = "no such row";

    /** What it has of one that somebody deleted. */
    static final String IT = "this row";

    /** How the address of changed rules begins. */
    static final String RULES = "rules#";

    static final String BESIDE = "; another document gives ";

    /** The values with those in one line that differ in nothing but what is said above the rows of their table. */
    static List<ToCompare> folded(List<ToCompare> values) {
        Map<String, List<ToCompare>> alike = values.stream()
                .collect(Collectors.groupingBy(
                        v -> v.matters.endsWith(EditedRows.WHOLE + ".")
                                ? StringUtils.substringBefore(v.row, "#") + v.matters
                                : v.row + v.value,
                        LinkedHashMap::new,
                        Collectors.toList()));
        return alike.values().stream()
                .map(same -> same.size() == 1 ? same.get(0) : same.get(0).of(same.size()))
                .toList();
    }

    private ToCompare of(int values) {
        return new ToCompare(row, document + ": " + values + " values stand in it", document, place, matters);
    }

    /** The same with its address behind the words. */
    ToCompare withAddress() {
        return new ToCompare(row, value + " (" + row + ")", document, place, matters);
    }

    /**
     * The values, those of changed rules with what is otherwise by the rules and tables of the program.
     *
     * @param unlike asked for once, where rules were changed
     */
    static Stream<ToCompare> byProgram(List<ToCompare> values, Supplier<Optional<List<String>>> unlike) {
        if (values.stream().noneMatch(v -> v.row.startsWith(RULES))) {
            return values.stream();
        }
        Optional<String> other =
                unlike.get().map(words -> words.isEmpty() ? "the same answer" : String.join(", ", words));
        return values.stream().map(v -> other.filter(o -> v.row.startsWith(RULES))
                .map(o -> StringUtils.removeEnd(v.matters, ".") + "; by its rules and tables: " + o + ".")
                .map(says -> new ToCompare(v.row, v.value, v.document, v.place, says))
                .orElse(v));
    }

    /** True when another value would make the answer another. */
    public boolean turns() {
        return !matters.isEmpty();
    }

    /** True when it is another value than the one that was compared, or decides against that of the program. */
    public boolean changed() {
        return matters.startsWith(CHANGED) || matters.startsWith(PROGRAM);
    }

    /** True when the value was compared, and documents differ about it. */
    boolean disputed() {
        return value.contains(BESIDE) && !changed();
    }
}
