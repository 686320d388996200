/** Logs and signals against messages decoded by hand and by others. */
@NullMarked
package org.fandown.reference.trace;

import org.jspecify.annotations.NullMarked;
