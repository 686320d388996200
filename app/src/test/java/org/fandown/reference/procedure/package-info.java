/** Orders of tests that places ask for or print, kept by plans and told where they are broken. */
@NullMarked
package org.fandown.reference.procedure;

import org.jspecify.annotations.NullMarked;
