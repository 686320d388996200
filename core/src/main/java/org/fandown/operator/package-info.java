/**
 * The perfect operator: performs a plan on the practice truck by needles, lamps, ears and rule
 * alone, and writes down what was observed.
 *
 * <p>Begin with {@link org.fandown.operator.Operator}, which makes a {@link
 * org.fandown.operator.Performance} of a plan: the inspection, the time of each step, what was
 * found abnormal and what could not be done. How a check is made is a {@link
 * org.fandown.operator.Performing}; {@link org.fandown.operator.Performings} knows them all.
 *
 * <p>Nothing here looks into the air system or into what is wrong with the truck.
 */
@NullMarked
package org.fandown.operator;

import org.jspecify.annotations.NullMarked;
