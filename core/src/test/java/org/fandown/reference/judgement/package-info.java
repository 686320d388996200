/** The judge's uncertainties and decisions compared with outside truth. */
@NullMarked
package org.fandown.reference.judgement;

import org.jspecify.annotations.NullMarked;
