/** Parts of the documents that are made from the code. */
@org.jspecify.annotations.NullMarked
package org.fandown.docs;
