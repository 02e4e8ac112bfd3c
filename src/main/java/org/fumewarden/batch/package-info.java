/**
 * Many tasks in, one line of advice each out, in the order of the input.
 *
 * <p>{@link org.fumewarden.batch.LineAdvisor} turns one line into one outcome and is safe for many threads; {@link
 * org.fumewarden.batch.Batch} runs it on a pool for one caller. Input ({@link org.fumewarden.batch.Entries}) and result files
 * ({@link org.fumewarden.batch.ResultFiles}) are each for one thread.
 */
package org.fumewarden.batch;
