/** What the vehicle is: its units, axles, chambers and valves; no behaviour. */
@NullMarked
package org.fandown.vehicle;

import org.jspecify.annotations.NullMarked;
