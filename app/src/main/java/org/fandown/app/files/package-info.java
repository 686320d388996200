/** Reads the files that people write into document trees. */
@NullMarked
package org.fandown.app.files;

import org.jspecify.annotations.NullMarked;
