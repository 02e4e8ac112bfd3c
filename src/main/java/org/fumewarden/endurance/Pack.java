package org.fumewarden.endurance;

import java.util.OptionalDouble;

/**
 * A battery pack as it is today.
 *
 * @param ratedWattHours when new
 * @param charge state of charge, 0 to 1
 * @param ageYears since made
 * @param fullCycles full discharges so far, part discharges added up
 * @param measuredHealth capacity over rated capacity when somebody measured it, 0 to 1
 */
public record Pack(
        double ratedWattHours, double charge, double ageYears, double fullCycles, OptionalDouble measuredHealth) {}
