/** Self-made results of the air engine, frozen: they guard against change, not for truth. */
@NullMarked
package org.fandown.regression.air;

import org.jspecify.annotations.NullMarked;
