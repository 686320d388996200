/** Tests of the judge by itself. */
@NullMarked
package org.fandown.judgement;

import org.jspecify.annotations.NullMarked;
