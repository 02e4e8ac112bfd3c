package org.fumewarden.upkeep;

import java.time.LocalDate;

/** The day and number of the entry that counts. */
public record Latest(LocalDate on, long sequence) {}
