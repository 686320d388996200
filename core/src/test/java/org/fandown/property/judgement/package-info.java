/** What must hold for every judgement. */
@NullMarked
package org.fandown.property.judgement;

import org.jspecify.annotations.NullMarked;
