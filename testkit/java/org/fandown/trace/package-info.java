/** Logs read into lists, for the tests of every module. */
@NullMarked
package org.fandown.trace;

import org.jspecify.annotations.NullMarked;
