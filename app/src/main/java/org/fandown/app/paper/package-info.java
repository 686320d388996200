/**
 * Prints the report as a PDF document. {@link org.fandown.app.paper.ReportPdf} writes what a {@link
 * org.fandown.app.paper.ReportContent} holds; {@link org.fandown.app.files.FileWriteException} says
 * why a file could not be written and what to do.
 */
@NullMarked
package org.fandown.app.paper;

import org.jspecify.annotations.NullMarked;
