package org.fumewarden.model;

import java.util.List;

/**
 * Address of a table row, with its citation.
 *
 * @param table id of the table
 * @param key key of the row, unique in its table and period
 * @param beside the milder values that other documents give, as printed; empty when the documents agree
 * @param affirmed who compared the value with its document, in words; empty when nobody did
 * @param changed how it differs from what was compared for it, in words; empty when it does not
 */
public record RowRef(
        String table, String key, Citation citation, List<String> beside, String affirmed, String changed) {
    public RowRef {
        Checks.text("table", table);
        Checks.text("key", key);
        Checks.present("citation", citation);
        beside = List.copyOf(beside);
    }

    /** A row for which one value is known. */
    public RowRef(String table, String key, Citation citation) {
        this(table, key, citation, List.of(), "", "");
    }

    /** The address as printed, for example {@code gb-limits#cadmium/twa}. */
    public String address() {
        return table + "#" + key;
    }

    /** True for the address of the same row. */
    public boolean isSameRow(RowRef other) {
        return key.equals(other.key) && table.equals(other.table);
    }
}
