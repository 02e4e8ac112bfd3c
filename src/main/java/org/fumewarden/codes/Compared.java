package org.fumewarden.codes;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.fumewarden.model.Citation;
import org.fumewarden.model.Confidence;

/**
 * Whether somebody compared a row with its document as it stands now.
 *
 * @param checks comparisons of this very value
 * @param edited how it differs from what the program has in its place
 * @param voided who compared another value
 */
record Compared(List<Affirmation> checks, EditedRows.At edited, List<String> voided) {
    /** What a value stands in that nobody compared with any document. */
    private static final String FOLDER = "Changed folder of rules";

    /** A row as the table has it. */
    static final Compared AS_WRITTEN = new Compared(List.of(), EditedRows.At.NOTHING, List.of());

    /**
     * Where a row stands and how well it is known: what its table says, unless the value is another than the one that was compared
     * for it. What an organisation typed apart stands where it typed it from, never in the document of the program.
     *
     * @param cell in which its value stands; empty where it is the whole row
     */
    Citation of(Citation own, String cell) {
        Confidence confidence = edited.words().isEmpty() ? own.confidence() : Confidence.MEMORY;
        List<TypedApart.Line> typed = edited.typed().stream()
                .filter(line -> cell.isEmpty()
                        || line.cell().equals(cell)
                        || edited.words().isEmpty())
                .toList();
        if (!typed.isEmpty()) {
            return raised(new Citation(
                    all(typed, TypedApart.Line::source),
                    all(typed, TypedApart.Line::place),
                    "",
                    confidence.weaker(Confidence.READ)));
        }
        return edited.values().isEmpty()
                ? raised(new Citation(own.source(), own.clause(), own.edition(), confidence))
                : changed(confidence);
    }

    private Citation raised(Citation written) {
        return new Citation(
                written.source(), written.clause(), written.edition(), Affirmation.confidence(written, checks));
    }

    /** Where a value stands that nobody typed apart: in what somebody compared it with, or in nothing but its folder. */
    private Citation changed(Confidence confidence) {
        Citation written = checks.isEmpty()
                ? new Citation(
                        FOLDER,
                        Citation.OF_ORGANISATION + ", compared with nothing, the program has " + edited.values(),
                        "",
                        confidence)
                : new Citation(
                        all(checks, Affirmation::document),
                        Citation.OF_ORGANISATION + ", compared by " + all(checks, Affirmation::seen),
                        "",
                        confidence);
        return raised(written);
    }

    /** The same of the value in one cell of the line. */
    Compared about(String cell) {
        return new Compared(checks, edited.about(cell), voided);
    }

    private static <T> String all(List<T> lines, Function<T, String> part) {
        return lines.stream().map(part).distinct().collect(Collectors.joining(", "));
    }

    /** What differs from what was compared, in words; empty when nothing does. */
    String changed() {
        if (!checks.isEmpty()) {
            return "";
        }
        List<String> words = new ArrayList<>();
        if (!edited.words().isEmpty()) {
            words.add("the program has " + edited.words());
        }
        voided.forEach(who -> words.add("what " + who + " affirmed was another value"));
        return String.join("; ", words);
    }
}
