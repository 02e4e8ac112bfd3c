/**
 * Exposure arithmetic: from samples, or from the task itself, to a ratio that names its statistic.
 *
 * <p>Pure functions of numbers. Times come in as minutes, concentrations in one unit that the caller keeps, and nothing
 * is rounded. Whatever cannot be computed comes out as a {@link org.fumewarden.model.Refused} with a status and a
 * sentence, never as NaN or infinity.
 */
package org.fumewarden.exposure;
