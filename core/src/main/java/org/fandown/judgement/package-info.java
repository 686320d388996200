/** Weighs evidence against the rules in force. */
@NullMarked
package org.fandown.judgement;

import org.jspecify.annotations.NullMarked;
