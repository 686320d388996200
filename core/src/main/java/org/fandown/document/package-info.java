/** A neutral tree of maps, lists and scalars that knows the path of each of its values. */
@NullMarked
package org.fandown.document;

import org.jspecify.annotations.NullMarked;
