package org.fumewarden.model;

/**
 * A process, metal or coating that puts an agent into the air.
 *
 * @param question {@code process}, {@code base-metal} or {@code coating}
 * @param processes set of processes for which the row holds, {@code any-process} for all
 * @param rank {@code principal} when the agent must be known before advice is complete, {@code minor} otherwise
 */
public record Emitter(RowRef ref, String question, String value, String processes, String agent, String rank)
        implements Row {}
