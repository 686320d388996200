/** Conversion factors against published tables. */
@NullMarked
package org.fandown.reference.units;

import org.jspecify.annotations.NullMarked;
