/**
 * From a recorded pressure trace to readings.
 *
 * <p>{@link org.fandown.trace.CandumpReader} takes the bytes of a log, in pieces of any size, and
 * gives {@link org.fandown.trace.CanFrame}s; {@link org.fandown.trace.SignalDecoder} takes these
 * and gives the {@link org.fandown.trace.Signal}s of SAE J1939 that say something about air and
 * brakes. Both allocate nothing for each line, and need the same memory however long the log is.
 * {@link org.fandown.trace.NetworkTrace} brings them onto the {@link org.fandown.trace.Channel}s of
 * a trace and onto one clock, with a {@link org.fandown.trace.Remark} where that is doubtful.
 *
 * <p>{@link org.fandown.trace.TraceWatch} takes the samples of a trace, from a network or
 * elsewhere, and says what was done: {@link org.fandown.trace.Recognised}. {@link
 * org.fandown.trace.TraceReadings} makes of it readings for the judge.
 */
@NullMarked
package org.fandown.trace;

import org.jspecify.annotations.NullMarked;
