/** What the law of a place asks a report to hold, looked for on the printed page. */
@NullMarked
package org.fandown.reference.paper;

import org.jspecify.annotations.NullMarked;
