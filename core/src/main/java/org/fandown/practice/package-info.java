/**
 * The practice truck: a vehicle with hidden faults that a person can walk round, operate and read.
 *
 * <p>Begin with {@link org.fandown.practice.PracticeTruck}: made from a {@link
 * org.fandown.practice.Scenario}, it takes one {@link org.fandown.practice.OperatorAction} after
 * the other, lets time pass, and shows its {@link org.fandown.practice.Dash}, the {@link
 * org.fandown.practice.Sound}s that are heard and the {@link org.fandown.practice.PracticeEvent}s
 * that happened. A {@link org.fandown.practice.Script} holds the actions of a whole run; {@link
 * org.fandown.practice.ScriptRun} performs it, and {@link org.fandown.practice.Signal}s read it
 * sample by sample. {@link org.fandown.practice.FaultChecks} says which check finds which fault.
 *
 * <p>The same scenario, seed and actions give the same bits on every machine.
 */
@NullMarked
package org.fandown.practice;

import org.jspecify.annotations.NullMarked;
