/**
 * The practice truck: a vehicle with hidden faults that a person can walk round, operate and read.
 *
 * <p>A {@link org.fandown.practice.Scenario} says what stands there; a {@link
 * org.fandown.practice.Script} what is done, one {@link org.fandown.practice.OperatorAction} after
 * the other; {@link org.fandown.practice.PracticeEvent}s what came of it.
 *
 * <p>The same scenario, seed and actions give the same bits on every machine.
 */
@NullMarked
package org.fandown.practice;

import org.jspecify.annotations.NullMarked;
