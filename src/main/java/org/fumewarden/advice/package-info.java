/**
 * Advice: what the rules concluded about a task, ordered for people.
 *
 * <p>{@link org.fumewarden.advice.Advisor} is the way in: safe for many threads, to be made once for each code. {@link
 * org.fumewarden.advice.Advice} and all its parts are immutable values. DEVELOPERS.md shows the calls.
 */
package org.fumewarden.advice;
