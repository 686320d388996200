/** The JSON reader against the examples of its standard. */
@NullMarked
package org.fandown.reference.document;

import org.jspecify.annotations.NullMarked;
