/**
 * Tests against the outside world: each expected value was typed from a source that the test names.
 *
 * <p>Topics are sub-packages. {@link org.fandown.reference.Source} says where a value comes from;
 * the architecture tests refuse a test here that does not carry it.
 */
@NullMarked
package org.fandown.reference;

import org.jspecify.annotations.NullMarked;
