/**
 * What strokes and pressures mean for the forces that stop and hold the vehicle; knows no law.
 *
 * <p>Begin with {@link org.fandown.braking.BrakingEstimate}: from a vehicle and its measured
 * applied strokes to forces per wheel and axle, a stop and a parking hold, cold ({@link
 * org.fandown.braking.HeatState}) and with hot drums. What could not be known is an {@link
 * org.fandown.braking.Answer} with its reason, what is open is a {@link org.fandown.braking.Range}.
 * Each {@link org.fandown.braking.Assumption} that was used comes with the result and must be shown
 * beside it.
 *
 * <p>The laws underneath can be used alone: {@link org.fandown.braking.PushRodForce}, {@link
 * org.fandown.braking.StrokeModel}, {@link org.fandown.braking.SpringBrake}, {@link
 * org.fandown.braking.FoundationBrake}, {@link org.fandown.braking.Stopping} and {@link
 * org.fandown.braking.ChamberAir}.
 */
@NullMarked
package org.fandown.braking;

import org.jspecify.annotations.NullMarked;
