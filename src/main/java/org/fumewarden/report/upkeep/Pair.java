package org.fumewarden.report.upkeep;

/** A field of a record with what is known of it. */
record Pair(String name, String value) {}
