package org.fumewarden.upkeep;

/** An item that may not be used now. */
public record Closed(String item, ItemKind kind, String label, UnitState state) {}
