/**
 * Tests of the shape of the core: who may use whom, and what the browser cannot do.
 *
 * <p>{@link org.fandown.architecture.ArrowTable} is the table of packages, {@link
 * org.fandown.architecture.CoreBans} the list of library parts to stay away from, {@link
 * org.fandown.architecture.BytecodeBans} the arithmetic and texts that only the byte code shows.
 * The classes below {@code bad} break each rule once, to prove that it can be broken.
 */
@NullMarked
package org.fandown.architecture;

import org.jspecify.annotations.NullMarked;
