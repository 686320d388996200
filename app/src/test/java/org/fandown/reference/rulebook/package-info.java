/**
 * Rules of the packs against the figures in the books.
 *
 * <p>{@link org.fandown.reference.rulebook.BoundaryTriples} judges three readings for each row of a
 * table: just below a printed limit, at it and just above it. Each row was typed from the book that
 * it names.
 */
@NullMarked
package org.fandown.reference.rulebook;

import org.jspecify.annotations.NullMarked;
