package org.fumewarden.model;

/** The place that orders or states something: a source of rules/shared/sources.yaml, a clause of it, its edition, and how well it was read. */
public record Citation(String source, String clause, String edition, Confidence confidence) {
    public Citation {
        Checks.text("source", source);
        Checks.text("clause", clause);
        Checks.present("confidence", confidence);
    }
}
