package org.fumewarden.codes;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.fumewarden.model.Averaging;
import org.fumewarden.model.Citation;
import org.fumewarden.model.Confidence;
import org.fumewarden.model.Keyed;

/**
 * Whether somebody compared a row with its document as it stands now.
 *
 * @param checks comparisons of this very value
 * @param edited how it differs from what the program has in its place
 * @param voided who compared another value
 */
record Compared(List<Affirmation> checks, EditedRows.At edited, List<String> voided) {
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
                .filter(line -> decides(line.cell(), cell))
                .toList();
        Citation written = typed.isEmpty()
                ? new Citation(own.source(), own.clause(), own.edition(), confidence)
                : new Citation(all(typed, TypedApart.Line::source), all(typed, TypedApart.Line::place), "", confidence);
        return new Citation(
                written.source(), written.clause(), written.edition(), Affirmation.confidence(written, checks));
    }

    /** True for the cell of a value itself, and for one beside it that is no value of its own once nothing else differs. */
    private boolean decides(String typed, String cell) {
        return cell.isEmpty()
                || typed.equals(cell)
                || edited.words().isEmpty() && !Keyed.keys(Averaging.class).contains(typed);
    }

    private static String all(List<TypedApart.Line> lines, Function<TypedApart.Line, String> part) {
        return lines.stream().map(part).distinct().collect(Collectors.joining("; "));
    }

    /** What differs from what was compared, in words; empty when nothing does. */
    String changed() {
        if (!checks.isEmpty()) {
            return "";
        }
        List<String> words = new ArrayList<>();
        edited.words().ifPresent(has -> words.add("the program has " + has));
        voided.forEach(who -> words.add("what " + who + " affirmed was another value"));
        return String.join("; ", words);
    }
}
