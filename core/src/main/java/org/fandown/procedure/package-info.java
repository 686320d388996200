/**
 * The order of work: what is done to prove a vehicle, what each piece of work needs and spoils, the
 * quickest order, and what is wrong with another.
 *
 * <p>{@link org.fandown.procedure.Steps} turns the rules in force into {@link
 * org.fandown.procedure.CheckStep}s; {@link org.fandown.procedure.WorkStep}s are what is done in
 * between. A {@link org.fandown.procedure.Course} says of a {@link org.fandown.procedure.Situation}
 * what a step makes of it and how long it takes; a {@link org.fandown.procedure.Need} what has to
 * hold before. {@link org.fandown.procedure.Planner} finds the quickest {@link
 * org.fandown.procedure.Plan}; {@link org.fandown.procedure.OrderExaminer} says what is wrong with
 * an order that somebody wrote.
 */
@NullMarked
package org.fandown.procedure;

import org.jspecify.annotations.NullMarked;
