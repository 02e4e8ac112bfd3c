package org.fumewarden.model;

/** A word of a catalogue, for example a process or a coating, with the name people read. */
public record Term(RowRef ref, String catalogue, String id, String name) implements Row {}
