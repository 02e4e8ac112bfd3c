package org.fumewarden.report;

import org.fumewarden.codes.ProgramFile;

/** The JSON Schema of advice. */
public final class AdviceSchema {
    private AdviceSchema() {}

    /** The text of the schema. */
    public static String text() {
        return ProgramFile.text(AdviceSchema.class, "advice.schema.json");
    }
}
