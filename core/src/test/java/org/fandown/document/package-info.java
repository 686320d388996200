/** Tests of documents, one class at a time. */
@NullMarked
package org.fandown.document;

import org.jspecify.annotations.NullMarked;
