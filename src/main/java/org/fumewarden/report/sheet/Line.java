package org.fumewarden.report.sheet;

import java.util.List;

/** One thing that a part of a sheet says. */
public sealed interface Line {

    /** The state of the advice: one bold word and its sentence. */
    record State(String word, String says) implements Line {}

    /**
     * A sentence.
     *
     * @param lead what it is about or when it holds, in bold; empty for none
     * @param notes numbers of notes at the end of the sheet; empty for none
     * @param language tag of its language when it is not that of the sheet; empty otherwise
     */
    record Says(Sign sign, String lead, String says, String notes, String language) implements Line {
        public Says(Sign sign, String says) {
            this(sign, "", says, "", "");
        }

        public Says(Sign sign, String lead, String says) {
            this(sign, lead, says, "", "");
        }

        /** The same sentence after a word on when or of what it holds. */
        public Says after(String word) {
            return new Says(sign, word, says, notes, language);
        }
    }

    /**
     * Cells in columns; the first cell of a row is its heading.
     *
     * @param numbers columns of numbers, from 0
     */
    record Table(List<String> heads, List<List<String>> rows, List<Integer> numbers) implements Line {
        public Table {
            heads = List.copyOf(heads);
            rows = rows.stream().map(List::copyOf).toList();
            numbers = List.copyOf(numbers);
        }

        /** False for a table whose columns need no heads. */
        public boolean headed() {
            return heads.stream().anyMatch(h -> !h.isEmpty());
        }
    }

    /** A heading within a part. */
    record Head(String text) implements Line {}

    /** Places to write on, side by side. */
    record Blanks(List<String> names) implements Line {
        public Blanks {
            names = List.copyOf(names);
        }
    }

    /**
     * A code for a machine, beside its words; text has only the words.
     *
     * @param held what the code holds
     */
    record Scan(String held, String words) implements Line {}

    /**
     * A drawing; text has only its words.
     *
     * @param svg markup of our own
     */
    record Drawing(String svg, String words, String language) implements Line {}
}
