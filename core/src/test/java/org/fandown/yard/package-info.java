/**
 * Packs, vehicles and inspections of our own invention, for tests of rules and judge. {@link
 * org.fandown.yard.Packs} writes rule packs of an invented place, {@link org.fandown.yard.Trucks}
 * vehicle files, and {@link org.fandown.yard.Trial} judges an inspection and finds its findings.
 */
@NullMarked
package org.fandown.yard;

import org.jspecify.annotations.NullMarked;
