package org.fumewarden.model;

/** Membership of a named set, for example an agent among the asthmagens. */
public record Member(RowRef ref, String set, String item) implements Row {}
