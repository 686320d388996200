/** Runs that a learner can make, and what the referee says of them. */
@NullMarked
package org.fandown.app.referee;

import org.jspecify.annotations.NullMarked;
