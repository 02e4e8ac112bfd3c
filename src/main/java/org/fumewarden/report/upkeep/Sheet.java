package org.fumewarden.report.upkeep;

import java.util.List;

/**
 * A sheet of paper before it takes the form of text or HTML.
 *
 * @param language tag of its language
 */
record Sheet(String title, List<Block> blocks, String language) {
    Sheet {
        blocks = List.copyOf(blocks);
    }

    /** A part of a sheet. */
    sealed interface Block {}

    record Heading(String text) implements Block {}

    record Paragraph(String text) implements Block {}

    /** A warning that must not be overlooked. */
    record Warning(String text) implements Block {}

    record Points(List<String> items) implements Block {
        Points {
            items = List.copyOf(items);
        }
    }

    /** Points with a box to tick. */
    record Ticks(List<String> items) implements Block {
        Ticks {
            items = List.copyOf(items);
        }
    }

    record Pair(String name, String value) {}

    record Pairs(List<Pair> pairs) implements Block {
        Pairs {
            pairs = List.copyOf(pairs);
        }
    }

    record Table(List<String> columns, List<List<String>> rows) implements Block {
        Table {
            columns = List.copyOf(columns);
            rows = List.copyOf(rows);
        }
    }

    /**
     * Lines to sign on.
     *
     * @param day the word for the date beside them
     */
    record Signatures(List<String> names, String day) implements Block {
        Signatures {
            names = List.copyOf(names);
        }
    }
}
