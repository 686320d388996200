/** What must hold for every file that is read. */
@NullMarked
package org.fandown.app.property;

import org.jspecify.annotations.NullMarked;
