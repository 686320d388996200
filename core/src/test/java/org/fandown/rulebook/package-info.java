/** Tests of the rulebook: which rules hold for a vehicle on a day, and how a limit is printed. */
@NullMarked
package org.fandown.rulebook;

import org.jspecify.annotations.NullMarked;
