/**
 * How fast recorded logs are read, decoded and segmented.
 *
 * <p>{@link org.fandown.bench.trace.TraceBenchmark} reads logs from memory and {@link
 * org.fandown.bench.trace.SampleBenchmark} gives samples to a watch. What they read comes from the
 * recordings and the example trace: {@link org.fandown.bench.trace.Logs}. {@link
 * org.fandown.bench.trace.LongLog} writes a log of any length.
 */
@NullMarked
package org.fandown.bench.trace;

import org.jspecify.annotations.NullMarked;
