/** Places and their dated, cited rules. */
@NullMarked
package org.fandown.rulebook;

import org.jspecify.annotations.NullMarked;
