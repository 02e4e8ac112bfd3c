package org.fumewarden.endurance;

/**
 * A point of a breakthrough curve.
 *
 * @param minutes from a new filter
 * @param exitFraction exit over inlet concentration, 0 to 1
 */
public record CurvePoint(double minutes, double exitFraction) {}
