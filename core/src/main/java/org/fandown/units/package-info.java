/** Quantities as types, read and printed with the unit in which they were entered. */
@NullMarked
package org.fandown.units;

import org.jspecify.annotations.NullMarked;
