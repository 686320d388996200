/**
 * How fast the air engine goes through time, beside a general-purpose solver of differential
 * equations.
 *
 * <p>{@link org.fandown.bench.air.AirBenchmark} holds the benchmarks. The same tractor and trailer,
 * described once as a {@link org.fandown.bench.air.Rig}, is run by the engine ({@link
 * org.fandown.bench.air.EngineRun}) and, from equations written out anew ({@link
 * org.fandown.bench.air.RigEquations}), by Hipparchus ({@link
 * org.fandown.bench.air.DormandPrinceRun}). Only this package knows Hipparchus.
 */
@NullMarked
package org.fandown.bench.air;

import org.jspecify.annotations.NullMarked;
