package agro.dose.sprayer;

import agro.units.Pressure;
import agro.units.QuantityRange;
import agro.units.Speed;

/**
 * One size in a choice of nozzles.
 *
 * @param size size and colour
 * @param pressure pressure that it needs for the wanted volume at the wanted speed
 * @param speeds speeds at which it gives the wanted volume within the allowed pressures
 * @param suitable whether the needed pressure is allowed
 */
public record NozzleCandidate(
    NozzleSize size, Pressure pressure, QuantityRange<Speed> speeds, boolean suitable) {}
