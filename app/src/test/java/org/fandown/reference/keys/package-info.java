/** Passwords against what their standard and its reference program print. */
@NullMarked
package org.fandown.reference.keys;

import org.jspecify.annotations.NullMarked;
