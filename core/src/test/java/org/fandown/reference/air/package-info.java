/** Checks the flow of air, tanks and chambers against closed forms and published tables. */
@NullMarked
package org.fandown.reference.air;

import org.jspecify.annotations.NullMarked;
