/** Tests of the practice truck and its files. */
@NullMarked
package org.fandown.practice;

import org.jspecify.annotations.NullMarked;
