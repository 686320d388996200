/** Tests of quantities, one class at a time. */
@NullMarked
package org.fandown.units;

import org.jspecify.annotations.NullMarked;
