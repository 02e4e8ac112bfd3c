package org.fumewarden.advice;

import org.fumewarden.model.Account;

/**
 * One line of what is in the air: how a hazard is settled for one averaging time, and what says so.
 *
 * @param name the agent in words
 * @param countedAs what level and limit are counted as, such as {@code as Cr}; empty without a limit or where its list says nothing
 * @param heldAgainst what the level was held against or what settles it, in words
 */
public record AccountLine(Account account, String name, String countedAs, String heldAgainst, Reason reason) {}
