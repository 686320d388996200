/** Tests a driver makes, run on a simulated air system, for the tests of every module. */
@NullMarked
package org.fandown.air;

import org.jspecify.annotations.NullMarked;
