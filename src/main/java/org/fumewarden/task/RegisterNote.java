package org.fumewarden.task;

/**
 * What the register of the site said of an answer when the task was decided. It explains; no rule reads it.
 *
 * @param about path of the answer in the task file, such as {@code wearer.fit-tested}
 * @param says one sentence
 */
public record RegisterNote(String about, String says) {}
