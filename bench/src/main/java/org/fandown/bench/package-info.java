/**
 * How fast inspections are read, judged and written.
 *
 * <p>{@link org.fandown.bench.InspectionBenchmark} holds the benchmarks, {@link
 * org.fandown.bench.Subject} what they work on. {@link org.fandown.bench.Main} runs them all and
 * prints the tables, also that of the air engine, which has a package of its own.
 */
@NullMarked
package org.fandown.bench;

import org.jspecify.annotations.NullMarked;
