package org.fumewarden.check;

import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;

/** A test that spoils a copy of the rules, made anew for each of its methods. */
public abstract class CopiedRules {
    /** Where the copy lies, and what is put beside it. */
    @TempDir
    protected Path folder;

    /** The copy. */
    protected Path rules;

    private final String[] more;

    /**
     * On shared rules, those of one code that stands alone, and more folders.
     *
     * @param more names of the further folders
     */
    protected CopiedRules(String... more) {
        this.more = more;
    }

    @BeforeEach
    protected final void copyRules() {
        rules = EditedRules.copy(folder, more);
    }
}
