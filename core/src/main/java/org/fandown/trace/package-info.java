/**
 * From recorded messages of a vehicle's network to signals over time.
 *
 * <p>{@link org.fandown.trace.CandumpReader} takes the bytes of a log, in pieces of any size, and
 * gives {@link org.fandown.trace.CanFrame}s; {@link org.fandown.trace.SignalDecoder} takes these
 * and gives the {@link org.fandown.trace.Signal}s of SAE J1939 that say something about air and
 * brakes. Both allocate nothing for each line, and need the same memory however long the log is.
 */
@NullMarked
package org.fandown.trace;

import org.jspecify.annotations.NullMarked;
