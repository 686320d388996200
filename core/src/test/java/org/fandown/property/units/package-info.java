/** What must hold for every quantity. */
@NullMarked
package org.fandown.property.units;

import org.jspecify.annotations.NullMarked;
