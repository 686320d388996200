/** Tests that what is timed is the whole work, and that every benchmark runs. */
@NullMarked
package org.fandown.bench;

import org.jspecify.annotations.NullMarked;
