/** Tests of the shape of the program around the core. */
@NullMarked
package org.fandown.app.architecture;

import org.jspecify.annotations.NullMarked;
