package org.fumewarden.model;

/**
 * Address of a table row, with its citation.
 *
 * @param table id of the table
 * @param key key of the row, unique in its table and period
 */
public record RowRef(String table, String key, Citation citation) {
    public RowRef {
        Checks.text("table", table);
        Checks.text("key", key);
        Checks.present("citation", citation);
    }

    /** The address as printed, for example {@code gb-limits#cadmium/twa}. */
    public String address() {
        return table + "#" + key;
    }
}
