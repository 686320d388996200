/** What must hold for every document and for every text that is none. */
@NullMarked
package org.fandown.property.document;

import org.jspecify.annotations.NullMarked;
