/** What was observed, by whom and how exactly. */
@NullMarked
package org.fandown.evidence;

import org.jspecify.annotations.NullMarked;
