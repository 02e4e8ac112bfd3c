package org.fumewarden.model;

/** The clause of a code that orders what a shared rule concludes. It is cited in place of the shared rule's own clause. */
public record ClauseFor(RowRef ref, String rule) implements Row {}
