/** Parts of documents that tests make and compare. */
@NullMarked
package org.fandown.generated;

import org.jspecify.annotations.NullMarked;
