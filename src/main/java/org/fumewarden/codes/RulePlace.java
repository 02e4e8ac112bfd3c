package org.fumewarden.codes;

/** Where the files of a rule base come from, which decides what they are compared with and what is hashed. */
enum RulePlace {
    INSIDE,
    FOLDER,
    ARCHIVE,
    /** An archive or a folder as programs kept and hashed it that left out what lay beside it. */
    BEFORE
}
