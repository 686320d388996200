/** Self-made results of the practice truck, frozen: they guard against change, not for truth. */
@NullMarked
package org.fandown.regression.practice;

import org.jspecify.annotations.NullMarked;
