/** Holds the air engine against a general-purpose solver, and the benchmarks to what they say. */
@NullMarked
package org.fandown.bench.air;

import org.jspecify.annotations.NullMarked;
