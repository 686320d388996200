/**
 * The compressed-air system of a vehicle over time: physics alone, knowing neither law nor person.
 *
 * <p>{@link org.fandown.air.AirNetworkBuilder} collects volumes ({@link org.fandown.air.AirNode})
 * and the ways between them ({@link org.fandown.air.AirLink}) into an immutable {@link
 * org.fandown.air.AirNetwork}. What changes over time stands in an {@link
 * org.fandown.air.AirState}: masses, temperatures, pressures, and the openings and commands that
 * valves set. An {@link org.fandown.air.AirStepper} moves a state through time.
 *
 * <p>A {@link org.fandown.air.Restriction} says how easily air passes and {@link
 * org.fandown.air.Flow} how much passes; a {@link org.fandown.air.ChamberLaw} says how the volume
 * of a brake chamber grows with its pressure; a {@link org.fandown.air.LappingValve} holds a
 * delivery at a commanded pressure. Inside all amounts are SI: absolute pascals, kilograms, cubic
 * metres, kelvins, seconds. The same steps give the same bits on every machine.
 */
@NullMarked
package org.fandown.air;

import org.jspecify.annotations.NullMarked;
