/** Prints the report as a PDF document. */
@NullMarked
package org.fandown.app.paper;

import org.jspecify.annotations.NullMarked;
