/** The vocabulary of what can be established about a vehicle. */
@NullMarked
package org.fandown.check;

import org.jspecify.annotations.NullMarked;
