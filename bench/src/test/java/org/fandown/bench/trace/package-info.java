/** Whether what the benchmarks of traces read is what they say. */
@NullMarked
package org.fandown.bench.trace;

import org.jspecify.annotations.NullMarked;
