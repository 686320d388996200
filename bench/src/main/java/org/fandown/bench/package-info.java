/**
 * How fast inspections are read, judged and written.
 *
 * <p>{@link org.fandown.bench.InspectionBenchmark} holds the benchmarks, {@link
 * org.fandown.bench.Subject} what they work on. {@link org.fandown.bench.Main} runs them all and
 * prints the tables, also those of the air engine and of recorded traces, which have packages of
 * their own.
 */
@NullMarked
package org.fandown.bench;

import org.jspecify.annotations.NullMarked;
