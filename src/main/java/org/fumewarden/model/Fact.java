package org.fumewarden.model;

/** Anything that a rule may read. */
public sealed interface Fact permits Input, Row, Conclusion {}
