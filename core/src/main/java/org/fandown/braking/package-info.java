/** What strokes and pressures mean for the force that stops the vehicle. */
@NullMarked
package org.fandown.braking;

import org.jspecify.annotations.NullMarked;
