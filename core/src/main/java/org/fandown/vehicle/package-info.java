/**
 * What the vehicle is: its units, axles, brakes, chambers and reservoirs; no behaviour.
 *
 * <p>Begin with {@link org.fandown.vehicle.Vehicle}, a single vehicle or a combination from front
 * to back. It holds {@link org.fandown.vehicle.VehicleUnit}s, these hold {@link
 * org.fandown.vehicle.Axle}s, and each axle has two {@link org.fandown.vehicle.WheelEnd}s with
 * their {@link org.fandown.vehicle.Chamber}s. A {@link org.fandown.vehicle.WheelId} such as {@code
 * 1L} names one end of one axle, counted through the whole combination. {@link
 * org.fandown.vehicle.Part}s are what the reach of a rule can depend on.
 *
 * <p>{@link org.fandown.vehicle.VehicleReader} reads a vehicle file, {@link
 * org.fandown.vehicle.VehicleDocument} writes it. {@link org.fandown.vehicle.ChamberTable} has the
 * area, full stroke and rated volume of chambers with their sources; legal stroke limits are not
 * here but in rule packs.
 *
 * <p>Sizes are kept as {@link org.fandown.units.Quantity}, in the unit in which they were entered,
 * because a limit is compared in that unit. What a file does not say is an empty {@code Optional}:
 * in a record the component is what its accessor returns, so components may be optional too.
 */
@NullMarked
package org.fandown.vehicle;

import org.jspecify.annotations.NullMarked;
