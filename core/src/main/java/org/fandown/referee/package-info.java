/**
 * Marks a run on the practice truck: safety, the checks the place asks for and what spoiled them,
 * the figures that were written down, what was concluded, order and time. {@link
 * org.fandown.referee.Referee} replays the {@link org.fandown.practice.Run} and looks on; {@link
 * org.fandown.referee.Sheet} says what each mistake costs; {@link org.fandown.referee.Marks} says
 * what was taken off and what to do instead. The needs of the checks are those the planner keeps
 * to, but how the vehicle stood is seen on the truck, not taken from a plan.
 */
@NullMarked
package org.fandown.referee;

import org.jspecify.annotations.NullMarked;
