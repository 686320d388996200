/**
 * Reads the files that people write into document trees, and writes files.
 *
 * <p>{@link org.fandown.app.files.DocumentFiles} reads a file, {@link
 * org.fandown.app.files.DocumentText} a text that is in memory already. Both raise only {@link
 * org.fandown.document.DocumentException}. The YAML library is used nowhere else in the program.
 * {@link org.fandown.app.files.WholeFile} writes files whole or not at all, and raises {@link
 * org.fandown.app.files.FileWriteException}.
 */
@NullMarked
package org.fandown.app.files;

import org.jspecify.annotations.NullMarked;
