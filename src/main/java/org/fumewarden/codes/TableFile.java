package org.fumewarden.codes;

import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import org.fumewarden.model.Citation;

/** One table of one document. */
public record TableFile(
        String file,
        String id,
        String kind,
        Citation citation,
        LocalDate checkedOn,
        List<DatedRow> rows,
        List<Question> questions) {
    /** The kinds of table there are. */
    public static Set<String> kinds() {
        return TableReader.kinds();
    }
}
