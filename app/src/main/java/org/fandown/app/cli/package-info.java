/** The command line: verbs, options and exit codes. */
@NullMarked
package org.fandown.app.cli;

import org.jspecify.annotations.NullMarked;
