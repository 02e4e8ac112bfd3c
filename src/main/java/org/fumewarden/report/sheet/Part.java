package org.fumewarden.report.sheet;

import java.util.List;

/**
 * A part of a sheet.
 *
 * @param key names it for styles and tests
 */
public record Part(String key, String title, List<Line> lines) {
    public Part {
        lines = List.copyOf(lines);
    }
}
