/** Tests of the charts. */
@NullMarked
package org.fandown.plot;

import org.jspecify.annotations.NullMarked;
