/**
 * Arithmetic of filters and powered units: how long a gas filter holds, how fast a particle filter loads, whether the air
 * is enough, how long a battery lasts, and how a shift is planned around it.
 *
 * <p>Pure functions. Every figure of a document comes in as an argument, read from a table by the caller; minutes, litres
 * per minute, ppm, grams, degrees Celsius, pascals and watt hours throughout. Whatever cannot be reckoned comes out as
 * {@link org.fumewarden.model.Refused} with a reason and a sentence, never as NaN. Every model here is on its safe
 * side or says that it is not, and none replaces the maker's own figures or the judgement of a competent person.
 */
package org.fumewarden.endurance;
