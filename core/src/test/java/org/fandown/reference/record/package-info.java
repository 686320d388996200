/** Canonical form and hash of records against published vectors. */
@NullMarked
package org.fandown.reference.record;

import org.jspecify.annotations.NullMarked;
