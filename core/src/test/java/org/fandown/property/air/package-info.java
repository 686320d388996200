/** What must hold for every network of volumes, whatever its valves do. */
@NullMarked
package org.fandown.property.air;

import org.jspecify.annotations.NullMarked;
