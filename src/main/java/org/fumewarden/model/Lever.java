package org.fumewarden.model;

/**
 * A change within the power of the people on site.
 *
 * @param path place in the task file
 * @param value what it becomes
 * @param says what somebody has to do, in words
 */
public record Lever(RowRef ref, String id, String path, String value, String says) implements Row {}
