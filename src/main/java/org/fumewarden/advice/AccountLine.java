package org.fumewarden.advice;

import org.fumewarden.model.Account;

/**
 * One line of what is in the air: how a hazard is settled for one averaging time, and what says so.
 *
 * @param name the agent in words
 * @param heldAgainst what the level was held against or what settles it, in words
 */
public record AccountLine(Account account, String name, String heldAgainst, Reason reason) {}
