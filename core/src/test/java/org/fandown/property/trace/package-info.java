/** What must hold for every log, however damaged. */
@NullMarked
package org.fandown.property.trace;

import org.jspecify.annotations.NullMarked;
